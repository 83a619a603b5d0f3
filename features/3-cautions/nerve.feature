Feature: Could heat harm a nerve?

  Rule: CAU-031 heat would work where a sensory nerve keeps the vein company

    @CAU-031
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-031 <says>

      Examples:
        | kind | technique         | vein            | level      | says        |
        | hit  | laser-1470-radial | great-saphenous | mid-calf   | speaks      |
        | hit  | rf-segmental-7cm  | small-saphenous | lower-calf | speaks      |
        | miss | laser-1470-radial | great-saphenous | thigh      | stays quiet |
        | miss | foam-polidocanol  | great-saphenous | mid-calf   | stays quiet |

  Rule: CAU-032 heat would work close to a nerve

    @CAU-032
    Scenario Outline: <kind>: <technique>, gap to the nerve <gap to the nerve>
      Given a sound leg
      And the case says the gap to the nerve: <gap to the nerve>
      When <technique> is considered
      Then CAU-032 <says>

      Examples:
        | kind    | technique         | gap to the nerve | says        |
        | hit     | laser-1470-radial | 3 mm             | speaks      |
        | miss    | laser-1470-radial | 15 mm            | stays quiet |
        | miss    | adhesive          | 3 mm             | stays quiet |
        | unknown | laser-1470-radial | not recorded     | is in doubt |
