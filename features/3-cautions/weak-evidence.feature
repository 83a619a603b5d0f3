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
