Feature: Can fluid part the nerve from the heat?

  Rule: EXC-028 the nerve touches the vein that would be heated

    @EXC-028
    Scenario Outline: <kind>: <technique>, gap to the nerve <gap to the nerve>
      Given a sound leg
      And the case says the gap to the nerve: <gap to the nerve>
      When <technique> is considered
      Then EXC-028 <says>

      Examples:
        | kind    | technique         | gap to the nerve | says        |
        | hit     | laser-1470-radial | 0.9 mm           | speaks      |
        | limit   | laser-1470-radial | 1 mm             | stays quiet |
        | miss    | laser-1470-radial | 15 mm            | stays quiet |
        | miss    | foam-polidocanol  | 0.5 mm           | stays quiet |
        | unknown | laser-1470-radial | not recorded     | is in doubt |
