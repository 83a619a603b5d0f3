Feature: Does a leaking tributary make the trunk wider than it need be?

  Rule: CAU-079 a tributary of this leg may be what makes the trunk too wide for a technique without heat

    @CAU-079
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>, other segment <other>
      Given a sound leg
      And another segment of the leg like the first
      And of the other segment the case says the vein: <other>
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-079 <says>
      And CAU-079 would caution slightly

      Examples:
        | kind    | technique         | vein            | lumen diameter | other           | says        |
        | hit     | adhesive          | great-saphenous | 7 mm           | tributary       | speaks      |
        | hit     | foam-polidocanol  | small-saphenous | 8 mm           | tributary       | speaks      |
        | limit   | adhesive          | great-saphenous | 6 mm           | tributary       | stays quiet |
        | miss    | adhesive          | great-saphenous | 7 mm           | small-saphenous | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 7 mm           | tributary       | stays quiet |
        | miss    | adhesive          | tributary       | 7 mm           | tributary       | stays quiet |
        | unknown | adhesive          | great-saphenous | not recorded   | tributary       | is in doubt |
