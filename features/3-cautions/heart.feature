Feature: Is the heart steady enough for an elective closure?

  Rule: CAU-086 a recent heart attack or unstable angina comes before any elective closure

    @CAU-086
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-086 <says>
      And CAU-086 would caution strongly

      Examples:
        | kind    | technique          | history of conditions        | says        |
        | hit     | laser-1470-radial  | myocardial-infarction-recent | speaks      |
        | hit     | adhesive           | unstable-angina              | speaks      |
        | hit     | focused-ultrasound | unstable-angina              | speaks      |
        | miss    | foam-polidocanol   | unstable-angina              | stays quiet |
        | miss    | laser-1470-radial  | none                         | stays quiet |
        | unknown | laser-1470-radial  | not recorded                 | is in doubt |
