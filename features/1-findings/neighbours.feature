Feature: What lies close to the vein?

  Rule: FIN-011 a nerve lies close to the vein

    @FIN-011
    Scenario Outline: <kind>: gap to the nerve <gap to the nerve>
      Given a sound leg
      And the case says the gap to the nerve: <gap to the nerve>
      When laser-1470-radial is considered
      Then FIN-011 <says>

      Examples:
        | kind    | gap to the nerve | says        |
        | hit     | 4.9 mm           | speaks      |
        | limit   | 5 mm             | stays quiet |
        | miss    | 15 mm            | stays quiet |
        | unknown | not recorded     | is in doubt |

  Rule: FIN-012 the skin lies close to the vein

    @FIN-012
    Scenario Outline: <kind>: depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When adhesive is considered
      Then FIN-012 <says>

      Examples:
        | kind    | depth to the skin | says        |
        | hit     | 4.9 mm            | speaks      |
        | limit   | 5 mm              | stays quiet |
        | miss    | 15 mm             | stays quiet |
        | unknown | not recorded      | is in doubt |

  Rule: FIN-013 the great saphenous vein below the knee runs with the saphenous nerve

    @FIN-013
    Scenario Outline: <kind>: vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When laser-1470-radial is considered
      Then FIN-013 <says>

      Examples:
        | kind | vein               | level      | says        |
        | hit  | great-saphenous    | upper-calf | speaks      |
        | hit  | great-saphenous    | ankle      | speaks      |
        | hit  | great-saphenous    | lower-calf | speaks      |
        | miss | great-saphenous    | thigh      | stays quiet |
        | miss | anterior-accessory | upper-calf | stays quiet |

  Rule: FIN-014 the small saphenous vein below the upper calf runs with the sural nerve

    @FIN-014
    Scenario Outline: <kind>: vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When laser-1470-radial is considered
      Then FIN-014 <says>

      Examples:
        | kind | vein            | level      | says        |
        | hit  | small-saphenous | mid-calf   | speaks      |
        | hit  | small-saphenous | ankle      | speaks      |
        | miss | small-saphenous | upper-calf | stays quiet |
        | miss | tributary       | mid-calf   | stays quiet |
