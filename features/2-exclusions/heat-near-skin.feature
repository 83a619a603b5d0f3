Feature: Is there room between the heat and the skin?

  Rule: EXC-007 heat needs a gap to the skin

    @EXC-007
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then EXC-007 <says>

      Examples:
        | kind    | technique         | depth to the skin | says        |
        | hit     | laser-1470-radial | 4.9 mm            | speaks      |
        | hit     | steam             | 2 mm              | speaks      |
        | limit   | laser-1470-radial | 5 mm              | stays quiet |
        | miss    | laser-1470-radial | 12 mm             | stays quiet |
        | miss    | adhesive          | 2 mm              | stays quiet |
        | unknown | laser-1470-radial | not recorded      | is in doubt |
