Feature: How is the heat to be set?

  Rule: SET-001 the tip of a heating catheter stays off the deep junction

    @SET-001
    Scenario Outline: <kind>: <technique>, vein <vein>, distance to the deep junction <distance to the deep junction>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the distance to the deep junction: <distance to the deep junction>
      When <technique> is considered
      Then SET-001 <says>
      And SET-001 would keep the distance of the tip from the deep junction between 2 cm and 2.5 cm

      Examples:
        | kind    | technique         | vein            | distance to the deep junction | says        |
        | hit     | laser-1470-radial | great-saphenous | 0 cm                          | speaks      |
        | limit   | rf-segmental-7cm  | great-saphenous | 2.5 cm                        | speaks      |
        | miss    | laser-1470-radial | great-saphenous | 10 cm                         | stays quiet |
        | miss    | adhesive          | great-saphenous | 0 cm                          | stays quiet |
        | miss    | laser-1470-radial | tributary       | 0 cm                          | stays quiet |
        | unknown | laser-1470-radial | great-saphenous | not recorded                  | is in doubt |

  Rule: SET-002 the segmental element heats the stretch next to the junction more than once

    @SET-002
    Scenario Outline: <kind>: <technique>, distance to the deep junction <distance to the deep junction>
      Given a sound leg
      And the case says the distance to the deep junction: <distance to the deep junction>
      When <technique> is considered
      Then SET-002 <says>
      And SET-002 would set the cycles on the first stretch to 2

      Examples:
        | kind    | technique           | distance to the deep junction | says        |
        | hit     | rf-segmental-7cm    | 0 cm                          | speaks      |
        | hit     | rf-segmental-3cm    | 0 cm                          | speaks      |
        | limit   | rf-segmental-7cm    | 2.5 cm                        | speaks      |
        | miss    | rf-segmental-7cm    | 2.6 cm                        | stays quiet |
        | miss    | rf-bipolar-pullback | 0 cm                          | stays quiet |
        | miss    | laser-1470-radial   | 0 cm                          | stays quiet |
        | unknown | rf-segmental-7cm    | not recorded                  | is in doubt |

  Rule: SET-003 the segmental element heats every stretch of a large trunk more than once

    @SET-003
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-003 <says>
      And SET-003 would set the cycles per stretch to 2

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | rf-segmental-7cm  | 12 mm          | speaks      |
        | hit     | rf-segmental-3cm  | 12 mm          | speaks      |
        | miss    | rf-segmental-7cm  | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | 12 mm          | stays quiet |
        | unknown | rf-segmental-7cm  | not recorded   | is in doubt |

  Rule: SET-004 the segmental element heats every stretch of a plain vein once

    @SET-004
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-004 <says>
      And SET-004 would set the cycles per stretch to 1

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | rf-segmental-7cm  | 6 mm           | speaks      |
        | hit     | rf-segmental-3cm  | 6 mm           | speaks      |
        | miss    | rf-segmental-7cm  | 12 mm          | stays quiet |
        | miss    | laser-1470-radial | 6 mm           | stays quiet |
        | unknown | rf-segmental-7cm  | not recorded   | is in doubt |

  Rule: SET-005 steam gives a plain vein the routine number of pulses

    @SET-005
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-005 <says>
      And SET-005 would set the pulses per centimetre to 2 /cm

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | steam             | 6 mm           | speaks      |
        | miss    | steam             | 12 mm          | stays quiet |
        | miss    | laser-1470-radial | 6 mm           | stays quiet |
        | unknown | steam             | not recorded   | is in doubt |

  Rule: SET-006 steam gives a large trunk more pulses

    @SET-006
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-006 <says>
      And SET-006 would set the pulses per centimetre to 3 /cm

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | steam             | 12 mm          | speaks      |
        | miss    | steam             | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | 12 mm          | stays quiet |
        | unknown | steam             | not recorded   | is in doubt |

  Rule: SET-007 the radial fibre takes the power of the small saphenous trial

    @SET-007
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then SET-007 <says>
      And SET-007 would set the power to 12 W

      Examples:
        | kind | technique         | vein            | says        |
        | hit  | laser-1470-radial | small-saphenous | speaks      |
        | miss | laser-1470-radial | great-saphenous | stays quiet |
        | miss | rf-segmental-7cm  | small-saphenous | stays quiet |

  Rule: SET-008 the radial fibre takes the linear energy of the small saphenous trial

    @SET-008
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then SET-008 <says>
      And SET-008 would set the linear energy to 70 J/cm

      Examples:
        | kind | technique         | vein            | says        |
        | hit  | laser-1470-radial | small-saphenous | speaks      |
        | miss | laser-1470-radial | great-saphenous | stays quiet |
        | miss | rf-segmental-7cm  | small-saphenous | stays quiet |

  Rule: SET-009 heat needs a mantle of fluid along the vein

    @SET-009
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then SET-009 <says>
      And SET-009 would keep the tumescent volume per centimetre between 8 mL/cm and 10 mL/cm

      Examples:
        | kind | technique         | says        |
        | hit  | laser-1470-radial | speaks      |
        | hit  | steam             | speaks      |
        | miss | adhesive          | stays quiet |
        | miss | foam-polidocanol  | stays quiet |
