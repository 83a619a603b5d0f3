Feature: What must be measured before this technique can be ranked?

  Rule: NEE-001 the wall thickness is needed and not known

    @NEE-001
    Scenario Outline: <kind>: <technique>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then NEE-001 <says>

      Examples:
        | kind | technique         | wall thickness | says        |
        | hit  | laser-1470-radial | not recorded   | speaks      |
        | miss | laser-1470-radial | 0.5 mm         | stays quiet |
        | miss | adhesive          | not recorded   | stays quiet |

  Rule: NEE-002 the lumen diameter is needed and not known

    @NEE-002
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then NEE-002 <says>

      Examples:
        | kind | technique         | lumen diameter | says        |
        | hit  | laser-1470-radial | not recorded   | speaks      |
        | miss | laser-1470-radial | 6 mm           | stays quiet |

  Rule: NEE-003 the depth to the skin is needed and not known

    @NEE-003
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then NEE-003 <says>

      Examples:
        | kind | technique         | depth to the skin | says        |
        | hit  | laser-1470-radial | not recorded      | speaks      |
        | miss | laser-1470-radial | 15 mm             | stays quiet |
        | miss | adhesive          | not recorded      | stays quiet |

  Rule: NEE-004 the gap to the nerve is needed and not known

    @NEE-004
    Scenario Outline: <kind>: <technique>, gap to the nerve <gap to the nerve>
      Given a sound leg
      And the case says the gap to the nerve: <gap to the nerve>
      When <technique> is considered
      Then NEE-004 <says>

      Examples:
        | kind | technique         | gap to the nerve | says        |
        | hit  | laser-1470-radial | not recorded     | speaks      |
        | miss | laser-1470-radial | 15 mm            | stays quiet |
        | miss | adhesive          | not recorded     | stays quiet |

  Rule: NEE-005 the course is needed and not known

    @NEE-005
    Scenario Outline: <kind>: <technique>, course <course>
      Given a sound leg
      And the case says the course: <course>
      When <technique> is considered
      Then NEE-005 <says>

      Examples:
        | kind | technique         | course       | says        |
        | hit  | laser-1470-radial | not recorded | speaks      |
        | miss | laser-1470-radial | straight     | stays quiet |
        | miss | foam-polidocanol  | not recorded | stays quiet |

  Rule: NEE-006 the thrombus is needed and not known

    @NEE-006
    Scenario Outline: <kind>: <technique>, thrombus <thrombus>
      Given a sound leg
      And the case says the thrombus: <thrombus>
      When <technique> is considered
      Then NEE-006 <says>

      Examples:
        | kind | technique          | thrombus     | says        |
        | hit  | laser-1470-radial  | not recorded | speaks      |
        | miss | laser-1470-radial  | none         | stays quiet |
        | miss | focused-ultrasound | not recorded | stays quiet |

  Rule: NEE-007 a lumen measured in spasm needs the relaxed lumen beside it

    @NEE-007
    Scenario Outline: <kind>: whether the vein was in spasm <whether the vein was in spasm>, relaxed lumen diameter <relaxed lumen diameter>
      Given a sound leg
      And the case says whether the vein was in spasm: <whether the vein was in spasm>
      And the case says the relaxed lumen diameter: <relaxed lumen diameter>
      When laser-1470-radial is considered
      Then NEE-007 <says>

      Examples:
        | kind    | whether the vein was in spasm | relaxed lumen diameter | says        |
        | hit     | yes                           | not recorded           | speaks      |
        | miss    | yes                           | 8 mm                   | stays quiet |
        | miss    | no                            | not recorded           | stays quiet |
        | unknown | not recorded                  | not recorded           | is in doubt |

  Rule: NEE-008 heat is planned without a known tumescent mix

    @NEE-008
    Scenario Outline: <kind>: <technique>, whether the tumescent mix holds adrenaline <whether the tumescent mix holds adrenaline>
      Given a sound leg
      And the case says whether the tumescent mix holds adrenaline: <whether the tumescent mix holds adrenaline>
      When <technique> is considered
      Then NEE-008 <says>

      Examples:
        | kind | technique         | whether the tumescent mix holds adrenaline | says        |
        | hit  | laser-1470-radial | not recorded                               | speaks      |
        | miss | laser-1470-radial | yes                                        | stays quiet |
        | miss | laser-1470-radial | no                                         | stays quiet |
        | miss | adhesive          | not recorded                               | stays quiet |

  Rule: NEE-009 the weight is needed and not known

    @NEE-009
    Scenario Outline: <kind>: <technique>, weight <weight>
      Given a sound leg
      And the case says the weight: <weight>
      When <technique> is considered
      Then NEE-009 <says>

      Examples:
        | kind | technique         | weight       | says        |
        | hit  | laser-1470-radial | not recorded | speaks      |
        | hit  | foam-polidocanol  | not recorded | speaks      |
        | miss | laser-1470-radial | 70 kg        | stays quiet |
        | miss | adhesive          | not recorded | stays quiet |

  Rule: NEE-010 the straight length is needed and not known

    @NEE-010
    Scenario Outline: <kind>: <technique>, straight length <straight length>
      Given a sound leg
      And the case says the straight length: <straight length>
      When <technique> is considered
      Then NEE-010 <says>

      Examples:
        | kind | technique         | straight length | says        |
        | hit  | laser-1470-radial | not recorded    | speaks      |
        | hit  | adhesive          | not recorded    | speaks      |
        | miss | laser-1470-radial | 35 cm           | stays quiet |
        | miss | foam-polidocanol  | not recorded    | stays quiet |

  Rule: NEE-011 the state of the deep veins is needed and not known

    @NEE-011
    Scenario Outline: <kind>: <technique>, state of the deep veins <state of the deep veins>
      Given a sound leg
      And the case says the state of the deep veins: <state of the deep veins>
      When <technique> is considered
      Then NEE-011 <says>

      Examples:
        | kind | technique         | state of the deep veins | says        |
        | hit  | laser-1470-radial | not recorded            | speaks      |
        | hit  | foam-polidocanol  | not recorded            | speaks      |
        | miss | laser-1470-radial | normal                  | stays quiet |
        | miss | foam-polidocanol  | refluxing               | stays quiet |

  Rule: NEE-012 a dose is planned for a segment of unknown length

    @NEE-012
    Scenario Outline: <kind>: <technique>, length <length>
      Given a sound leg
      And the case says the length: <length>
      When <technique> is considered
      Then NEE-012 <says>

      Examples:
        | kind | technique         | length       | says        |
        | hit  | laser-1470-radial | not recorded | speaks      |
        | hit  | foam-polidocanol  | not recorded | speaks      |
        | hit  | mechanochemical   | not recorded | speaks      |
        | miss | laser-1470-radial | 35 cm        | stays quiet |
        | miss | adhesive          | not recorded | stays quiet |
