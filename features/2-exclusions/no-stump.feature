Feature: Has the recurrence a straight stump that heat could close?

  Rule: EXC-034 new winding channels at the old junction offer heat no stump

    @EXC-034
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      And the case says the course: <course>
      When <technique> is considered
      Then EXC-034 <says>

      Examples:
        | kind    | technique         | vein              | level     | course       | says        |
        | hit     | laser-1470-radial | recurrent-channel | groin     | winding      | speaks      |
        | hit     | steam             | recurrent-channel | popliteal | very-winding | speaks      |
        | miss    | laser-1470-radial | recurrent-channel | groin     | straight     | stays quiet |
        | miss    | foam-polidocanol  | recurrent-channel | groin     | winding      | stays quiet |
        | miss    | laser-1470-radial | recurrent-channel | thigh     | winding      | stays quiet |
        | miss    | laser-1470-radial | tributary         | groin     | winding      | stays quiet |
        | unknown | laser-1470-radial | recurrent-channel | groin     | not recorded | is in doubt |

  Rule: EXC-038 new winding channels at the old junction offer wire and glue no stump

    @EXC-038
    Scenario Outline: <kind>: <technique>, vein <vein>, level <level>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the level: <level>
      And the case says the course: <course>
      When <technique> is considered
      Then EXC-038 <says>

      Examples:
        | kind    | technique        | vein              | level     | course       | says        |
        | hit     | adhesive         | recurrent-channel | groin     | winding      | speaks      |
        | hit     | mechanochemical  | recurrent-channel | popliteal | very-winding | speaks      |
        | miss    | adhesive         | recurrent-channel | groin     | straight     | stays quiet |
        | miss    | foam-polidocanol | recurrent-channel | groin     | winding      | stays quiet |
        | miss    | adhesive         | recurrent-channel | thigh     | winding      | stays quiet |
        | miss    | adhesive         | tributary         | groin     | winding      | stays quiet |
        | unknown | adhesive         | recurrent-channel | groin     | not recorded | is in doubt |
