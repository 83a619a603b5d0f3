Feature: Is the patient allergic to the drug that would close the vein?

  Rule: EXC-008 the foam holds polidocanol and the patient is allergic to it

    @EXC-008
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then EXC-008 <says>

      Examples:
        | kind    | technique        | allergies                  | says        |
        | hit     | foam-polidocanol | polidocanol                | speaks      |
        | miss    | foam-polidocanol | none                       | stays quiet |
        | miss    | foam-polidocanol | sodium-tetradecyl-sulphate | stays quiet |
        | miss    | foam-sts         | polidocanol                | stays quiet |
        | unknown | foam-polidocanol | not recorded               | is in doubt |

  Rule: EXC-009 the foam holds sodium tetradecyl sulphate and the patient is allergic to it

    @EXC-009
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then EXC-009 <says>

      Examples:
        | kind    | technique        | allergies                  | says        |
        | hit     | foam-sts         | sodium-tetradecyl-sulphate | speaks      |
        | miss    | foam-sts         | none                       | stays quiet |
        | miss    | foam-sts         | polidocanol                | stays quiet |
        | miss    | foam-polidocanol | sodium-tetradecyl-sulphate | stays quiet |
        | unknown | foam-sts         | not recorded               | is in doubt |

  Rule: EXC-010 the patient is allergic to both drugs of mechanochemical closure

    @EXC-010
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then EXC-010 <says>

      Examples:
        | kind    | technique       | allergies                               | says        |
        | hit     | mechanochemical | polidocanol, sodium-tetradecyl-sulphate | speaks      |
        | miss    | mechanochemical | polidocanol                             | stays quiet |
        | miss    | mechanochemical | none                                    | stays quiet |
        | miss    | adhesive        | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | mechanochemical | sodium-tetradecyl-sulphate              | stays quiet |
        | unknown | mechanochemical | not recorded                            | is in doubt |

  Rule: EXC-011 the room has no other drug than the polidocanol the patient is allergic to

    @EXC-011
    Scenario Outline: <kind>: <technique>, allergies <allergies>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the allergies: <allergies>
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then EXC-011 <says>

      Examples:
        | kind    | technique       | allergies    | sclerosants of the room                 | says        |
        | hit     | mechanochemical | polidocanol  | polidocanol                             | speaks      |
        | miss    | mechanochemical | polidocanol  | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | mechanochemical | none         | polidocanol                             | stays quiet |
        | miss    | adhesive        | polidocanol  | polidocanol                             | stays quiet |
        | unknown | mechanochemical | not recorded | polidocanol                             | is in doubt |
        | unknown | mechanochemical | polidocanol  | not recorded                            | is in doubt |

  Rule: EXC-012 the room has no other drug than the tetradecyl sulphate the patient is allergic to

    @EXC-012
    Scenario Outline: <kind>: <technique>, allergies <allergies>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the allergies: <allergies>
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then EXC-012 <says>

      Examples:
        | kind    | technique       | allergies                  | sclerosants of the room                 | says        |
        | hit     | mechanochemical | sodium-tetradecyl-sulphate | sodium-tetradecyl-sulphate              | speaks      |
        | miss    | mechanochemical | sodium-tetradecyl-sulphate | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | mechanochemical | none                       | sodium-tetradecyl-sulphate              | stays quiet |
        | miss    | adhesive        | sodium-tetradecyl-sulphate | sodium-tetradecyl-sulphate              | stays quiet |
        | unknown | mechanochemical | not recorded               | sodium-tetradecyl-sulphate              | is in doubt |
        | unknown | mechanochemical | sodium-tetradecyl-sulphate | not recorded                            | is in doubt |
