Feature: Could heat harm a nerve?

  Rule: CAU-031 heat would work where a sensory nerve keeps the vein company

    @CAU-031
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-031 <says>
      And CAU-031 would caution moderately

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
      And CAU-032 would caution strongly

      Examples:
        | kind    | technique         | gap to the nerve | says        |
        | hit     | laser-1470-radial | 3 mm             | speaks      |
        | miss    | laser-1470-radial | 15 mm            | stays quiet |
        | miss    | adhesive          | 3 mm             | stays quiet |
        | unknown | laser-1470-radial | not recorded     | is in doubt |

  Rule: CAU-066 heat would work beside the tibial nerve behind the knee

    @CAU-066
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-066 <says>
      And CAU-066 would caution strongly

      Examples:
        | kind | technique         | vein              | level      | says        |
        | hit  | laser-1470-radial | small-saphenous   | popliteal  | speaks      |
        | hit  | rf-segmental-7cm  | small-saphenous   | popliteal  | speaks      |
        | miss | laser-1470-radial | small-saphenous   | upper-calf | stays quiet |
        | miss | laser-1470-radial | recurrent-channel | popliteal  | stays quiet |
        | miss | adhesive          | small-saphenous   | popliteal  | stays quiet |

  Rule: CAU-069 the small saphenous vein would be punctured below the middle of the calf

    @CAU-069
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-069 <says>
      And CAU-069 would caution moderately

      Examples:
        | kind | technique         | vein            | level      | says        |
        | hit  | laser-1470-radial | small-saphenous | lower-calf | speaks      |
        | hit  | rf-segmental-7cm  | small-saphenous | ankle      | speaks      |
        | miss | laser-1470-radial | small-saphenous | mid-calf   | stays quiet |
        | miss | laser-1470-radial | great-saphenous | ankle      | stays quiet |
        | miss | adhesive          | small-saphenous | ankle      | stays quiet |

  Rule: CAU-070 heat would be carried down to the knee

    @CAU-070
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-070 <says>
      And CAU-070 would caution slightly

      Examples:
        | kind | technique         | vein              | level | says        |
        | hit  | laser-1470-radial | great-saphenous   | knee  | speaks      |
        | miss | laser-1470-radial | great-saphenous   | thigh | stays quiet |
        | miss | laser-1470-radial | recurrent-channel | knee  | stays quiet |
        | miss | adhesive          | great-saphenous   | knee  | stays quiet |
