Feature: What do the guidelines put first for a great or small saphenous trunk?

  Scenario: the order of the national guidance comes out for a plain trunk
    Given a sound leg
    When laser-1470-radial is considered
    Then it stands as preferred
    And it comes before foam-polidocanol
    When rf-segmental-7cm is considered
    Then it stands as preferred
    And it comes before foam-sts
    When foam-polidocanol is considered
    Then it stands as suitable
    And it comes before adhesive
    And it comes before mechanochemical
    And it comes before focused-ultrasound

  Scenario: adhesive stands ready for a plain trunk, the rotating wire only with an eye on the drug
    Given a sound leg
    When adhesive is considered
    Then it stands as suitable
    When mechanochemical is considered
    Then it stands as careful
    When microwave is considered
    Then it stands as careful

  Scenario: in a trunk somewhat wider foam that leaves the outer wall alive falls behind adhesive
    Given a sound leg
    And the case says the lumen diameter: 6.4 mm
    When laser-1470-radial is considered
    Then it stands as preferred
    When foam-polidocanol is considered
    Then it stands as careful
    And it comes before focused-ultrasound
    When adhesive is considered
    Then it comes before foam-polidocanol

  Rule: PRE-001 laser or radiofrequency comes first for a great or small saphenous vein a catheter can pass

    @PRE-001
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-001 <says>
      And PRE-001 would prefer as first choice

      Examples:
        | kind    | technique         | vein            | course       | says        |
        | hit     | laser-1470-radial | great-saphenous | straight     | speaks      |
        | hit     | rf-segmental-7cm  | small-saphenous | straight     | speaks      |
        | miss    | foam-polidocanol  | great-saphenous | straight     | stays quiet |
        | miss    | steam             | great-saphenous | straight     | stays quiet |
        | miss    | laser-1470-radial | tributary       | straight     | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | very-winding | stays quiet |
        | miss    | microwave         | great-saphenous | straight     | stays quiet |
        | unknown | laser-1470-radial | great-saphenous | not recorded | is in doubt |

  Rule: PRE-002 foam comes next for a great or small saphenous vein

    @PRE-002
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-002 <says>
      And PRE-002 would prefer strongly

      Examples:
        | kind | technique        | vein               | says        |
        | hit  | foam-polidocanol | great-saphenous    | speaks      |
        | hit  | foam-sts         | small-saphenous    | speaks      |
        | miss | foam-polidocanol | anterior-accessory | stays quiet |
        | miss | adhesive         | great-saphenous    | stays quiet |

  Rule: PRE-003 adhesive closure is an accepted way to close a trunk without heat

    @PRE-003
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-003 <says>
      And PRE-003 would prefer moderately

      Examples:
        | kind | technique        | vein               | says        |
        | hit  | adhesive         | great-saphenous    | speaks      |
        | hit  | adhesive         | anterior-accessory | speaks      |
        | miss | adhesive         | tributary          | stays quiet |
        | miss | foam-polidocanol | great-saphenous    | stays quiet |

  Rule: PRE-004 mechanochemical closure may be used to close a trunk without heat

    @PRE-004
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-004 <says>
      And PRE-004 would prefer slightly

      Examples:
        | kind | technique       | vein            | says        |
        | hit  | mechanochemical | great-saphenous | speaks      |
        | hit  | mechanochemical | thigh-extension | speaks      |
        | miss | mechanochemical | tributary       | stays quiet |
        | miss | adhesive        | great-saphenous | stays quiet |

  Rule: PRE-005 foam suits a narrow great saphenous vein

    @PRE-005
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then PRE-005 <says>
      And PRE-005 would prefer slightly

      Examples:
        | kind    | technique        | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol | great-saphenous | 5.9 mm         | speaks      |
        | limit   | foam-polidocanol | great-saphenous | 6 mm           | stays quiet |
        | miss    | foam-polidocanol | great-saphenous | 8 mm           | stays quiet |
        | miss    | adhesive         | great-saphenous | 5 mm           | stays quiet |
        | miss    | foam-polidocanol | small-saphenous | 5 mm           | stays quiet |
        | unknown | foam-polidocanol | great-saphenous | not recorded   | is in doubt |
