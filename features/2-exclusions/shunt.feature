Feature: Could foam bubbles pass from the right heart to the brain?

  Rule: EXC-015 foam meets a shunt that has already caused symptoms

    @EXC-015
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then EXC-015 <says>

      Examples:
        | kind    | technique        | history of conditions           | says        |
        | hit     | foam-polidocanol | right-to-left-shunt-symptomatic | speaks      |
        | hit     | foam-sts         | right-to-left-shunt-symptomatic | speaks      |
        | miss    | foam-polidocanol | right-to-left-shunt-silent      | stays quiet |
        | miss    | mechanochemical  | right-to-left-shunt-symptomatic | stays quiet |
        | unknown | foam-polidocanol | not recorded                    | is in doubt |
