Feature: What can act where a catheter cannot pass?

  Rule: PRE-035 foam or focused ultrasound can act in a lumen crossed by scar

    @PRE-035
    Scenario Outline: <kind>: <technique>, thrombus <thrombus>
      Given a sound leg
      And the case says the thrombus: <thrombus>
      When <technique> is considered
      Then PRE-035 <says>
      And PRE-035 would prefer moderately

      Examples:
        | kind    | technique          | thrombus     | says        |
        | hit     | foam-polidocanol   | webs         | speaks      |
        | hit     | focused-ultrasound | organised    | speaks      |
        | miss    | foam-polidocanol   | none         | stays quiet |
        | miss    | laser-1470-radial  | webs         | stays quiet |
        | unknown | foam-polidocanol   | not recorded | is in doubt |

  Rule: PRE-036 foam follows a winding vein

    @PRE-036
    Scenario Outline: <kind>: <technique>, course <course>
      Given a sound leg
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-036 <says>
      And PRE-036 would prefer moderately

      Examples:
        | kind    | technique        | course       | says        |
        | hit     | foam-polidocanol | winding      | speaks      |
        | hit     | foam-sts         | very-winding | speaks      |
        | miss    | foam-polidocanol | straight     | stays quiet |
        | miss    | adhesive         | winding      | stays quiet |
        | unknown | foam-polidocanol | not recorded | is in doubt |
