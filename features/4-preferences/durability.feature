Feature: Which technique keeps the vein closed longest?

  Rule: PRE-018 heat kept the great saphenous vein closed longer than foam

    @PRE-018
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-018 <says>
      And PRE-018 would prefer moderately

      Examples:
        | kind | technique         | vein               | says        |
        | hit  | laser-1470-radial | great-saphenous    | speaks      |
        | hit  | rf-segmental-7cm  | great-saphenous    | speaks      |
        | miss | laser-1470-radial | anterior-accessory | stays quiet |
        | miss | steam             | great-saphenous    | stays quiet |
        | miss | foam-polidocanol  | great-saphenous    | stays quiet |
        | miss | microwave         | great-saphenous    | stays quiet |

  Rule: PRE-019 heat kept the small saphenous vein closed more often than foam

    @PRE-019
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-019 <says>
      And PRE-019 would prefer slightly

      Examples:
        | kind | technique         | vein            | says        |
        | hit  | laser-1470-radial | small-saphenous | speaks      |
        | miss | laser-1470-radial | great-saphenous | stays quiet |
        | miss | microwave         | small-saphenous | stays quiet |
        | miss | foam-polidocanol  | small-saphenous | stays quiet |
        | miss | steam             | small-saphenous | stays quiet |

  Rule: PRE-020 mechanochemical closure left more great saphenous veins open than heat

    @PRE-020
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-020 <says>
      And PRE-020 would disfavour slightly

      Examples:
        | kind | technique       | vein            | says        |
        | hit  | mechanochemical | great-saphenous | speaks      |
        | miss | mechanochemical | small-saphenous | stays quiet |
        | miss | adhesive        | great-saphenous | stays quiet |

  Rule: PRE-021 mechanochemical closure fails more often above the width of its best results

    @PRE-021
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then PRE-021 <says>
      And PRE-021 would disfavour moderately

      Examples:
        | kind    | technique       | vein            | lumen diameter | says        |
        | hit     | mechanochemical | great-saphenous | 6 mm           | speaks      |
        | limit   | mechanochemical | great-saphenous | 5.9 mm         | stays quiet |
        | miss    | mechanochemical | great-saphenous | 5 mm           | stays quiet |
        | miss    | adhesive        | great-saphenous | 8 mm           | stays quiet |
        | miss    | mechanochemical | tributary       | 8 mm           | stays quiet |
        | unknown | mechanochemical | great-saphenous | not recorded   | is in doubt |

  Rule: PRE-022 no guideline gives focused ultrasound a place among the ways to close a trunk

    @PRE-022
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-022 <says>
      And PRE-022 would disfavour moderately

      Examples:
        | kind | technique          | vein            | says        |
        | hit  | focused-ultrasound | great-saphenous | speaks      |
        | miss | focused-ultrasound | perforator      | stays quiet |
        | miss | laser-1470-radial  | great-saphenous | stays quiet |

  Rule: PRE-023 adhesive closure can end in an inflamed vein

    @PRE-023
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then PRE-023 <says>
      And PRE-023 would disfavour moderately

      Examples:
        | kind | technique         | says        |
        | hit  | adhesive          | speaks      |
        | miss | laser-1470-radial | stays quiet |
        | miss | foam-polidocanol  | stays quiet |

  Rule: PRE-043 adhesive kept pace with segmental radiofrequency in the great saphenous vein

    @PRE-043
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-043 <says>
      And PRE-043 would prefer slightly

      Examples:
        | kind | technique        | vein            | says        |
        | hit  | adhesive         | great-saphenous | speaks      |
        | miss | adhesive         | small-saphenous | stays quiet |
        | miss | foam-polidocanol | great-saphenous | stays quiet |
