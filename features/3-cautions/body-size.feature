Feature: Does the size of the body make the work harder?

  Rule: CAU-036 the patient is very heavy for the height

    @CAU-036
    Scenario Outline: <kind>: weight <weight>, height <height>
      Given a sound leg
      And the case says the weight: <weight>
      And the case says the height: <height>
      When laser-1470-radial is considered
      Then CAU-036 <says>
      And CAU-036 would caution slightly

      Examples:
        | kind    | weight       | height       | says        |
        | hit     | 110 kg       | 168 cm       | speaks      |
        | hit     | 100 kg       | 168 cm       | speaks      |
        | limit   | 140 kg       | 200 cm       | stays quiet |
        | miss    | 70 kg        | 168 cm       | stays quiet |
        | unknown | not recorded | 168 cm       | is in doubt |
        | unknown | 110 kg       | not recorded | is in doubt |
