Feature: Is a motor nerve behind the knee in reach?

  Rule: CAU-071 heat would work among the motor nerves behind the knee

    @CAU-071
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-071 <says>
      And CAU-071 would caution strongly

      Examples:
        | kind | technique         | vein              | level     | says        |
        | hit  | laser-1470-radial | recurrent-channel | popliteal | speaks      |
        | hit  | microwave         | tributary         | popliteal | speaks      |
        | hit  | laser-1470-radial | perforator        | popliteal | speaks      |
        | miss | laser-1470-radial | tributary         | mid-calf  | stays quiet |
        | miss | laser-1470-radial | small-saphenous   | popliteal | stays quiet |
        | miss | foam-polidocanol  | recurrent-channel | popliteal | stays quiet |

  Rule: CAU-072 the focus would work among the motor nerves behind the knee

    @CAU-072
    Scenario Outline: <kind>: <technique>, level <level>
      Given a sound leg
      And the case says the level: <level>
      When <technique> is considered
      Then CAU-072 <says>
      And CAU-072 would caution strongly

      Examples:
        | kind | technique          | level     | says        |
        | hit  | focused-ultrasound | popliteal | speaks      |
        | miss | focused-ultrasound | mid-calf  | stays quiet |
        | miss | adhesive           | popliteal | stays quiet |
