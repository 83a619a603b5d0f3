Feature: Has a varicose vein bled?

  Rule: CAU-074 a varicose vein of this patient has bled

    @CAU-074
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-074 <says>
      And CAU-074 would caution slightly

      Examples:
        | kind    | technique         | history of conditions | says        |
        | hit     | foam-polidocanol  | varicose-bleeding     | speaks      |
        | hit     | laser-1470-radial | varicose-bleeding     | speaks      |
        | miss    | foam-polidocanol  | none                  | stays quiet |
        | unknown | foam-polidocanol  | not recorded          | is in doubt |
