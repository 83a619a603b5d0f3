Feature: Is the trunk too wide for mechanochemical closure?

  Rule: EXC-027 the trunk is wider than mechanochemical closure is offered for

    @EXC-027
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then EXC-027 <says>

      Examples:
        | kind    | technique         | vein            | lumen diameter | says        |
        | hit     | mechanochemical   | great-saphenous | 12.1 mm        | speaks      |
        | limit   | mechanochemical   | great-saphenous | 12 mm          | stays quiet |
        | miss    | mechanochemical   | great-saphenous | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 14 mm          | stays quiet |
        | miss    | mechanochemical   | tributary       | 14 mm          | stays quiet |
        | unknown | mechanochemical   | great-saphenous | not recorded   | is in doubt |
