Feature: Does an anticoagulant change what can be expected?

  Rule: CAU-001 therapeutic anticoagulation lets more heated veins stay open early

    @CAU-001
    Scenario Outline: <kind>: <technique>, anticoagulation <anticoagulation>
      Given a sound leg
      And the case says the anticoagulation: <anticoagulation>
      When <technique> is considered
      Then CAU-001 <says>
      And CAU-001 would caution moderately

      Examples:
        | kind    | technique         | anticoagulation | says        |
        | hit     | laser-1470-radial | therapeutic     | speaks      |
        | miss    | laser-1470-radial | none            | stays quiet |
        | miss    | laser-1470-radial | prophylactic    | stays quiet |
        | miss    | adhesive          | therapeutic     | stays quiet |
        | unknown | laser-1470-radial | not recorded    | is in doubt |

  Rule: CAU-002 therapeutic anticoagulation works against a sclerosant

    @CAU-002
    Scenario Outline: <kind>: <technique>, anticoagulation <anticoagulation>
      Given a sound leg
      And the case says the anticoagulation: <anticoagulation>
      When <technique> is considered
      Then CAU-002 <says>
      And CAU-002 would caution moderately

      Examples:
        | kind    | technique        | anticoagulation | says        |
        | hit     | foam-polidocanol | therapeutic     | speaks      |
        | hit     | mechanochemical  | therapeutic     | speaks      |
        | miss    | foam-polidocanol | none            | stays quiet |
        | miss    | adhesive         | therapeutic     | stays quiet |
        | unknown | foam-polidocanol | not recorded    | is in doubt |
