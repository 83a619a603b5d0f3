Feature: Is there a fresh clot where no catheter goes?

  Rule: CAU-007 foam or focused ultrasound would act near an acute superficial thrombosis

    @CAU-007
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-007 <says>
      And CAU-007 would caution moderately

      Examples:
        | kind    | technique          | history of conditions        | says        |
        | hit     | foam-polidocanol   | superficial-thrombosis-acute | speaks      |
        | hit     | focused-ultrasound | superficial-thrombosis-acute | speaks      |
        | miss    | foam-polidocanol   | none                         | stays quiet |
        | miss    | laser-1470-radial  | superficial-thrombosis-acute | stays quiet |
        | unknown | foam-polidocanol   | not recorded                 | is in doubt |

  Rule: CAU-008 foam or focused ultrasound would act on a vein that holds fresh thrombus

    @CAU-008
    Scenario Outline: <kind>: <technique>, thrombus <thrombus>
      Given a sound leg
      And the case says the thrombus: <thrombus>
      When <technique> is considered
      Then CAU-008 <says>
      And CAU-008 would caution strongly

      Examples:
        | kind    | technique          | thrombus     | says        |
        | hit     | foam-polidocanol   | fresh        | speaks      |
        | hit     | focused-ultrasound | fresh        | speaks      |
        | miss    | foam-polidocanol   | none         | stays quiet |
        | miss    | laser-1470-radial  | fresh        | stays quiet |
        | unknown | foam-polidocanol   | not recorded | is in doubt |
