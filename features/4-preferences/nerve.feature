Feature: What suits a vein with a nerve beside it?

  Scenario: where a nerve keeps the vein company a technique without heat comes first
    Given a sound leg
    And the case says the vein: small-saphenous
    And the case says the level: lower-calf
    And the case says the gap to the nerve: 3 mm
    And the case says the length: 18 cm
    When laser-1470-radial is considered
    Then it stands as careful
    When mechanochemical is considered
    Then it stands as suitable
    And it comes before laser-1470-radial
    When focused-ultrasound is considered
    Then it stands as excluded

  Rule: PRE-032 a technique without heat spares the nerve beside the vein

    @PRE-032
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then PRE-032 <says>
      And PRE-032 would prefer moderately

      Examples:
        | kind | technique         | vein            | level      | says        |
        | hit  | mechanochemical   | small-saphenous | lower-calf | speaks      |
        | hit  | foam-polidocanol  | great-saphenous | mid-calf   | speaks      |
        | miss | mechanochemical   | great-saphenous | thigh      | stays quiet |
        | miss | laser-1470-radial | great-saphenous | mid-calf   | stays quiet |

  Rule: PRE-033 heat carried into the calf saves later sclerotherapy

    @PRE-033
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then PRE-033 <says>
      And PRE-033 would prefer slightly

      Examples:
        | kind | technique         | vein            | level      | says        |
        | hit  | laser-1470-radial | great-saphenous | upper-calf | speaks      |
        | hit  | laser-1470-radial | great-saphenous | mid-calf   | speaks      |
        | miss | laser-1470-radial | great-saphenous | lower-calf | stays quiet |
        | miss | laser-1470-radial | small-saphenous | upper-calf | stays quiet |
        | miss | foam-polidocanol  | great-saphenous | upper-calf | stays quiet |

  Rule: PRE-048 adhesive left the sural nerve alone

    @PRE-048
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-048 <says>
      And PRE-048 would prefer slightly

      Examples:
        | kind | technique        | vein            | says        |
        | hit  | adhesive         | small-saphenous | speaks      |
        | miss | adhesive         | great-saphenous | stays quiet |
        | miss | foam-polidocanol | small-saphenous | stays quiet |
