Feature: Do the guidelines speak of a patient this young?

  Rule: CAU-056 the patient is younger than the guideline covers

    @CAU-056
    Scenario Outline: <kind>: age <age>
      Given a sound leg
      And the case says the age: <age>
      When laser-1470-radial is considered
      Then CAU-056 <says>
      And CAU-056 would caution strongly

      Examples:
        | kind    | age          | says        |
        | hit     | 17 a         | speaks      |
        | limit   | 18 a         | stays quiet |
        | miss    | 56 a         | stays quiet |
        | unknown | not recorded | is in doubt |
