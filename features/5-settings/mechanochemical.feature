Feature: Which drug and strength go behind the wire?

  Rule: SET-018 liquid polidocanol goes behind the wire

    @SET-018
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then SET-018 <says>
      And SET-018 would keep the sclerosant strength between 2 % and 3 %

      Examples:
        | kind    | technique        | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical  | polidocanol, sodium-tetradecyl-sulphate | none         | speaks      |
        | miss    | mechanochemical  | sodium-tetradecyl-sulphate              | none         | stays quiet |
        | miss    | mechanochemical  | polidocanol                             | polidocanol  | stays quiet |
        | miss    | foam-polidocanol | polidocanol                             | none         | stays quiet |
        | unknown | mechanochemical  | not recorded                            | none         | is in doubt |
        | unknown | mechanochemical  | polidocanol                             | not recorded | is in doubt |

  Rule: SET-019 liquid tetradecyl sulphate goes behind the wire where it is the only drug

    @SET-019
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then SET-019 <says>
      And SET-019 would keep the sclerosant strength between 1.5 % and 2 %

      Examples:
        | kind    | technique       | sclerosants of the room                 | says        |
        | hit     | mechanochemical | sodium-tetradecyl-sulphate              | speaks      |
        | miss    | mechanochemical | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | mechanochemical | polidocanol                             | stays quiet |
        | miss    | foam-sts        | sodium-tetradecyl-sulphate              | stays quiet |
        | miss    | mechanochemical | none                                    | stays quiet |
        | unknown | mechanochemical | not recorded                            | is in doubt |

  Rule: SET-020 liquid tetradecyl sulphate goes behind the wire in a patient allergic to polidocanol

    @SET-020
    Scenario Outline: <kind>: <technique>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then SET-020 <says>
      And SET-020 would keep the sclerosant strength between 1.5 % and 2 %

      Examples:
        | kind    | technique        | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical  | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | speaks      |
        | miss    | mechanochemical  | polidocanol, sodium-tetradecyl-sulphate | none         | stays quiet |
        | miss    | mechanochemical  | polidocanol                             | polidocanol  | stays quiet |
        | miss    | mechanochemical  | sodium-tetradecyl-sulphate              | polidocanol  | stays quiet |
        | miss    | foam-polidocanol | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | unknown | mechanochemical  | not recorded                            | polidocanol  | is in doubt |
        | unknown | mechanochemical  | polidocanol, sodium-tetradecyl-sulphate | not recorded | is in doubt |
