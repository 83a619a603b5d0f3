Feature: Is this patient prone to a deep clot afterwards?

  Rule: CAU-015 a sclerosant meets a patient prone to clot

    @CAU-015
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-015 <says>
      And CAU-015 would caution moderately

      Examples:
        | kind    | technique        | history of conditions     | says        |
        | hit     | foam-polidocanol | thrombophilia-severe      | speaks      |
        | hit     | mechanochemical  | deep-vein-thrombosis-past | speaks      |
        | miss    | foam-polidocanol | none                      | stays quiet |
        | miss    | adhesive         | active-cancer             | stays quiet |
        | unknown | foam-polidocanol | not recorded              | is in doubt |

  Rule: CAU-016 heat meets a patient prone to clot

    @CAU-016
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-016 <says>
      And CAU-016 would caution moderately

      Examples:
        | kind    | technique         | history of conditions   | says        |
        | hit     | laser-1470-radial | active-cancer           | speaks      |
        | hit     | rf-segmental-7cm  | pulmonary-embolism-past | speaks      |
        | miss    | laser-1470-radial | none                    | stays quiet |
        | miss    | adhesive          | active-cancer           | stays quiet |
        | unknown | laser-1470-radial | not recorded            | is in doubt |
