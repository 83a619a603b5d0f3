Feature: Is there drug enough for the whole length?

  Rule: CAU-062 the customary way of mechanochemical closure takes more polidocanol for this length than a day allows

    @CAU-062
    Scenario Outline: <kind>: <technique>, length <length>, weight <weight>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the straight length: 10 cm
      And the case says the length: <length>
      And the case says the weight: <weight>
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then CAU-062 <says>
      And CAU-062 would caution moderately

      Examples:
        | kind    | technique       | length       | weight       | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical | 80 cm        | 45 kg        | polidocanol                             | none         | speaks      |
        | hit     | mechanochemical | 21 cm        | 75 kg        | polidocanol                             | none         | speaks      |
        | limit   | mechanochemical | 20 cm        | 75 kg        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical | 15 cm        | 90 kg        | polidocanol                             | none         | stays quiet |
        | miss    | adhesive        | 80 cm        | 45 kg        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical | 80 cm        | 45 kg        | sodium-tetradecyl-sulphate              | none         | stays quiet |
        | miss    | mechanochemical | 80 cm        | 45 kg        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | unknown | mechanochemical | 35 cm        | not recorded | polidocanol                             | none         | is in doubt |
        | unknown | mechanochemical | not recorded | 70 kg        | polidocanol                             | none         | is in doubt |
        | unknown | mechanochemical | 80 cm        | 45 kg        | polidocanol                             | not recorded | is in doubt |

  Rule: CAU-063 tetradecyl sulphate is the only drug behind the wire and this length takes more than its label allows

    @CAU-063
    Scenario Outline: <kind>: <technique>, length <length>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the straight length: 10 cm
      And the case says the length: <length>
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then CAU-063 <says>
      And CAU-063 would caution moderately

      Examples:
        | kind    | technique       | length       | sclerosants of the room                 | says        |
        | hit     | mechanochemical | 17 cm        | sodium-tetradecyl-sulphate              | speaks      |
        | limit   | mechanochemical | 16 cm        | sodium-tetradecyl-sulphate              | stays quiet |
        | miss    | mechanochemical | 12 cm        | sodium-tetradecyl-sulphate              | stays quiet |
        | miss    | mechanochemical | 40 cm        | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | foam-sts        | 40 cm        | sodium-tetradecyl-sulphate              | stays quiet |
        | miss    | mechanochemical | 40 cm        | none                                    | stays quiet |
        | unknown | mechanochemical | not recorded | sodium-tetradecyl-sulphate              | is in doubt |
        | unknown | mechanochemical | 40 cm        | not recorded                            | is in doubt |

  Rule: CAU-064 an allergy leaves tetradecyl sulphate behind the wire and this length takes more than its label allows

    @CAU-064
    Scenario Outline: <kind>: <technique>, length <length>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the straight length: 10 cm
      And the case says the length: <length>
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then CAU-064 <says>
      And CAU-064 would caution moderately

      Examples:
        | kind    | technique       | length       | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical | 17 cm        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | speaks      |
        | limit   | mechanochemical | 16 cm        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | miss    | mechanochemical | 12 cm        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | miss    | mechanochemical | 40 cm        | polidocanol, sodium-tetradecyl-sulphate | none         | stays quiet |
        | miss    | foam-sts        | 40 cm        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | miss    | mechanochemical | 40 cm        | polidocanol                             | polidocanol  | stays quiet |
        | miss    | mechanochemical | 40 cm        | sodium-tetradecyl-sulphate              | polidocanol  | stays quiet |
        | unknown | mechanochemical | not recorded | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | is in doubt |
        | unknown | mechanochemical | 40 cm        | polidocanol, sodium-tetradecyl-sulphate | not recorded | is in doubt |
