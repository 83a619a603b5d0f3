Feature: What do the guidelines put first for an accessory trunk?

  Rule: PRE-006 laser or radiofrequency comes first for an anterior accessory vein a catheter can pass

    @PRE-006
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-006 <says>
      And PRE-006 would prefer as first choice

      Examples:
        | kind    | technique         | vein                | course       | says        |
        | hit     | laser-1470-radial | anterior-accessory  | straight     | speaks      |
        | miss    | foam-polidocanol  | anterior-accessory  | straight     | stays quiet |
        | miss    | laser-1470-radial | posterior-accessory | straight     | stays quiet |
        | miss    | microwave         | anterior-accessory  | straight     | stays quiet |
        | miss    | laser-1470-radial | anterior-accessory  | very-winding | stays quiet |
        | miss    | steam             | anterior-accessory  | straight     | stays quiet |
        | unknown | laser-1470-radial | anterior-accessory  | not recorded | is in doubt |

  Rule: PRE-007 laser or radiofrequency suits a posterior accessory vein or a thigh extension

    @PRE-007
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-007 <says>
      And PRE-007 would prefer strongly

      Examples:
        | kind    | technique         | vein                | course       | says        |
        | hit     | laser-1470-radial | posterior-accessory | straight     | speaks      |
        | hit     | rf-segmental-7cm  | thigh-extension     | straight     | speaks      |
        | miss    | adhesive          | thigh-extension     | straight     | stays quiet |
        | miss    | laser-1470-radial | great-saphenous     | straight     | stays quiet |
        | miss    | steam             | thigh-extension     | straight     | stays quiet |
        | miss    | laser-1470-radial | posterior-accessory | very-winding | stays quiet |
        | miss    | microwave         | posterior-accessory | straight     | stays quiet |
        | unknown | laser-1470-radial | posterior-accessory | not recorded | is in doubt |

  Rule: PRE-008 foam may be used in an accessory trunk

    @PRE-008
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-008 <says>
      And PRE-008 would prefer slightly

      Examples:
        | kind | technique        | vein                | says        |
        | hit  | foam-polidocanol | anterior-accessory  | speaks      |
        | hit  | foam-sts         | thigh-extension     | speaks      |
        | hit  | foam-polidocanol | posterior-accessory | speaks      |
        | miss | foam-polidocanol | tributary           | stays quiet |
        | miss | adhesive         | anterior-accessory  | stays quiet |

  Rule: PRE-009 adhesive closed accessory veins as often as heat

    @PRE-009
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-009 <says>
      And PRE-009 would prefer slightly

      Examples:
        | kind | technique        | vein               | says        |
        | hit  | adhesive         | anterior-accessory | speaks      |
        | miss | adhesive         | great-saphenous    | stays quiet |
        | miss | foam-polidocanol | anterior-accessory | stays quiet |

  Rule: PRE-010 foam inflamed accessory veins more often

    @PRE-010
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-010 <says>
      And PRE-010 would disfavour slightly

      Examples:
        | kind | technique        | vein               | says        |
        | hit  | foam-polidocanol | anterior-accessory | speaks      |
        | miss | foam-polidocanol | great-saphenous    | stays quiet |
        | miss | adhesive         | anterior-accessory | stays quiet |
