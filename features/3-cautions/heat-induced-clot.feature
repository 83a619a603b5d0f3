Feature: Is a clot at the junction more likely after this heat?

  Rule: CAU-077 heat in a large great saphenous trunk

    @CAU-077
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-077 <says>
      And CAU-077 would caution slightly

      Examples:
        | kind    | technique         | vein            | lumen diameter | says        |
        | hit     | laser-1470-radial | great-saphenous | 11 mm          | speaks      |
        | miss    | laser-1470-radial | great-saphenous | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | small-saphenous | 11 mm          | stays quiet |
        | miss    | adhesive          | great-saphenous | 11 mm          | stays quiet |
        | unknown | laser-1470-radial | great-saphenous | not recorded   | is in doubt |
