Feature: Is the vein a trunk, and is it a large one?

  Rule: FIN-001 a great or small saphenous vein is a trunk

    @FIN-001
    Scenario Outline: <kind>: vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When laser-1470-radial is considered
      Then FIN-001 <says>

      Examples:
        | kind | vein            | says        |
        | hit  | great-saphenous | speaks      |
        | hit  | small-saphenous | speaks      |
        | miss | tributary       | stays quiet |

  Rule: FIN-002 an accessory vein or a thigh extension is a trunk

    @FIN-002
    Scenario Outline: <kind>: vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When laser-1470-radial is considered
      Then FIN-002 <says>

      Examples:
        | kind | vein                | says        |
        | hit  | anterior-accessory  | speaks      |
        | hit  | posterior-accessory | speaks      |
        | hit  | thigh-extension     | speaks      |
        | miss | perforator          | stays quiet |

  Rule: FIN-003 the trunk is large

    @FIN-003
    Scenario Outline: <kind>: vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When laser-1470-radial is considered
      Then FIN-003 <says>

      Examples:
        | kind    | vein                | lumen diameter | says        |
        | hit     | great-saphenous     | 10.1 mm        | speaks      |
        | hit     | thigh-extension     | 14 mm          | speaks      |
        | hit     | small-saphenous     | 10.1 mm        | speaks      |
        | hit     | anterior-accessory  | 10.1 mm        | speaks      |
        | hit     | posterior-accessory | 10.1 mm        | speaks      |
        | limit   | great-saphenous     | 10 mm          | stays quiet |
        | miss    | great-saphenous     | 6 mm           | stays quiet |
        | miss    | tributary           | 11 mm          | stays quiet |
        | unknown | great-saphenous     | not recorded   | is in doubt |
