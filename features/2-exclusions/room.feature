Feature: Does the room hold what the technique needs?

  Rule: ROM-001 the room does not hold the technique

    @ROM-001
    Scenario Outline: <kind>: devices of the room <devices of the room>
      Given a sound leg
      And the case says the devices of the room: <devices of the room>
      When laser-1470-radial is considered
      Then ROM-001 <says>

      Examples:
        | kind    | devices of the room                | says        |
        | hit     | rf-segmental-7cm, foam-polidocanol | speaks      |
        | miss    | laser-1470-radial, adhesive        | stays quiet |
        | unknown | not recorded                       | is in doubt |

  Rule: ROM-002 no polidocanol is stocked for the foam

    @ROM-002
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then ROM-002 <says>

      Examples:
        | kind    | technique        | sclerosants of the room    | says        |
        | hit     | foam-polidocanol | sodium-tetradecyl-sulphate | speaks      |
        | hit     | foam-polidocanol | none                       | speaks      |
        | miss    | foam-polidocanol | polidocanol                | stays quiet |
        | miss    | foam-sts         | sodium-tetradecyl-sulphate | stays quiet |
        | unknown | foam-polidocanol | not recorded               | is in doubt |

  Rule: ROM-003 no sodium tetradecyl sulphate is stocked for the foam

    @ROM-003
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then ROM-003 <says>

      Examples:
        | kind    | technique        | sclerosants of the room    | says        |
        | hit     | foam-sts         | polidocanol                | speaks      |
        | hit     | foam-sts         | none                       | speaks      |
        | miss    | foam-sts         | sodium-tetradecyl-sulphate | stays quiet |
        | miss    | foam-polidocanol | polidocanol                | stays quiet |
        | unknown | foam-sts         | not recorded               | is in doubt |

  Rule: ROM-004 neither drug of mechanochemical closure is stocked

    @ROM-004
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then ROM-004 <says>

      Examples:
        | kind    | technique       | sclerosants of the room    | says        |
        | hit     | mechanochemical | none                       | speaks      |
        | miss    | mechanochemical | polidocanol                | stays quiet |
        | miss    | mechanochemical | sodium-tetradecyl-sulphate | stays quiet |
        | miss    | adhesive        | none                       | stays quiet |
        | unknown | mechanochemical | not recorded               | is in doubt |

  Rule: ROM-005 no gas is at hand to make foam

    @ROM-005
    Scenario Outline: <kind>: <technique>, gas for foam <gas for foam>
      Given a sound leg
      And the case says the gas for foam: <gas for foam>
      When <technique> is considered
      Then ROM-005 <says>

      Examples:
        | kind    | technique         | gas for foam | says        |
        | hit     | foam-polidocanol  | none         | speaks      |
        | miss    | foam-polidocanol  | air          | stays quiet |
        | miss    | foam-sts          | co2-o2       | stays quiet |
        | miss    | laser-1470-radial | none         | stays quiet |
        | unknown | foam-polidocanol  | not recorded | is in doubt |
