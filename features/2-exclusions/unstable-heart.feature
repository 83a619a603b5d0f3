Feature: Is the heart steady enough for a sclerosant?

  Rule: EXC-029 a sclerosant would meet a recent heart attack or unstable angina

    @EXC-029
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then EXC-029 <says>

      Examples:
        | kind    | technique        | history of conditions        | says        |
        | hit     | foam-polidocanol | myocardial-infarction-recent | speaks      |
        | hit     | mechanochemical  | unstable-angina              | speaks      |
        | miss    | foam-polidocanol | none                         | stays quiet |
        | miss    | adhesive         | unstable-angina              | stays quiet |
        | unknown | foam-polidocanol | not recorded                 | is in doubt |
