Feature: Is there enough evidence to know what this technique does?

  Rule: CAU-043 microwave closure rests on little evidence

    @CAU-043
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then CAU-043 <says>
      And CAU-043 would caution moderately

      Examples:
        | kind | technique         | says        |
        | hit  | microwave         | speaks      |
        | miss | laser-1470-radial | stays quiet |
        | miss | steam             | stays quiet |

  Rule: CAU-044 steam closure rests on little evidence

    @CAU-044
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then CAU-044 <says>
      And CAU-044 would caution moderately

      Examples:
        | kind | technique         | says        |
        | hit  | steam             | speaks      |
        | miss | laser-1470-radial | stays quiet |
        | miss | microwave         | stays quiet |

  Rule: CAU-045 focused ultrasound of a trunk rests on series without a comparison

    @CAU-045
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then CAU-045 <says>
      And CAU-045 would caution moderately

      Examples:
        | kind | technique          | vein               | says        |
        | hit  | focused-ultrasound | great-saphenous    | speaks      |
        | hit  | focused-ultrasound | anterior-accessory | speaks      |
        | miss | focused-ultrasound | perforator         | stays quiet |
        | miss | laser-1470-radial  | great-saphenous    | stays quiet |

  Rule: CAU-078 the consensus does not name focused ultrasound for recurrent channels

    @CAU-078
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then CAU-078 <says>
      And CAU-078 would caution moderately

      Examples:
        | kind | technique          | vein              | says        |
        | hit  | focused-ultrasound | recurrent-channel | speaks      |
        | miss | focused-ultrasound | great-saphenous   | stays quiet |
        | miss | foam-polidocanol   | recurrent-channel | stays quiet |

  Rule: CAU-081 microwave would work below the knee

    @CAU-081
    Scenario Outline: <kind>: <technique>, level <level>
      Given a sound leg
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-081 <says>
      And CAU-081 would caution slightly

      Examples:
        | kind | technique         | level      | says        |
        | hit  | microwave         | mid-calf   | speaks      |
        | hit  | microwave         | upper-calf | speaks      |
        | hit  | microwave         | lower-calf | speaks      |
        | hit  | microwave         | ankle      | speaks      |
        | miss | microwave         | thigh      | stays quiet |
        | miss | laser-1470-radial | mid-calf   | stays quiet |
