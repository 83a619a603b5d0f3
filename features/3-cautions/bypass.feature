Feature: Will the vein be needed as a graft?

  Rule: CAU-039 the great saphenous vein may be needed for a bypass

    @CAU-039
    Scenario Outline: <kind>: vein <vein>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then CAU-039 <says>
      And CAU-039 would caution strongly

      Examples:
        | kind    | vein            | history of conditions | says        |
        | hit     | great-saphenous | bypass-needs-vein     | speaks      |
        | miss    | great-saphenous | none                  | stays quiet |
        | miss    | small-saphenous | bypass-needs-vein     | stays quiet |
        | unknown | great-saphenous | not recorded          | is in doubt |
