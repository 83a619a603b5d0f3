Feature: Is the chest steady enough for a sclerosant?

  Rule: CAU-042 a sclerosant meets asthma that is not under control

    @CAU-042
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-042 <says>
      And CAU-042 would caution strongly

      Examples:
        | kind    | technique        | history of conditions | says        |
        | hit     | foam-polidocanol | asthma-uncontrolled   | speaks      |
        | hit     | mechanochemical  | asthma-uncontrolled   | speaks      |
        | miss    | foam-polidocanol | none                  | stays quiet |
        | miss    | adhesive         | asthma-uncontrolled   | stays quiet |
        | unknown | foam-polidocanol | not recorded          | is in doubt |
