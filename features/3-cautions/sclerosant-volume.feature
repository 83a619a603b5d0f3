Feature: Does filling the vein take more sclerosant than one session allows?

  Rule: CAU-049 the lumen holds more than the foam of one session

    # 19.89436788648692 cm of this lumen holds the ceiling to the last digit
    @CAU-049
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then CAU-049 <says>
      And CAU-049 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | length               | says        |
        | hit     | foam-polidocanol  | 8 mm           | 40 cm                | speaks      |
        | hit     | foam-sts          | 7 mm           | 35 cm                | speaks      |
        | limit   | foam-polidocanol  | 8 mm           | 19.89436788648692 cm | stays quiet |
        | miss    | foam-polidocanol  | 5 mm           | 30 cm                | stays quiet |
        | miss    | laser-1470-radial | 8 mm           | 40 cm                | stays quiet |
        | unknown | foam-polidocanol  | not recorded   | 35 cm                | is in doubt |
        | unknown | foam-polidocanol  | 6 mm           | not recorded         | is in doubt |

  Rule: CAU-068 the lumen holds more than the label of factory-made polidocanol microfoam allows

    # 29.841551829730378 cm of this lumen holds the ceiling to the last digit
    @CAU-068
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then CAU-068 <says>
      And CAU-068 would caution moderately

      Examples:
        | kind    | technique        | lumen diameter | length                | says        |
        | hit     | foam-polidocanol | 8 mm           | 40 cm                 | speaks      |
        | hit     | foam-polidocanol | 8 mm           | 30.5 cm               | speaks      |
        | limit   | foam-polidocanol | 8 mm           | 29.841551829730378 cm | stays quiet |
        | miss    | foam-polidocanol | 6 mm           | 35 cm                 | stays quiet |
        | miss    | foam-sts         | 8 mm           | 40 cm                 | stays quiet |
        | unknown | foam-polidocanol | not recorded   | 35 cm                 | is in doubt |
        | unknown | foam-polidocanol | 6 mm           | not recorded          | is in doubt |

  Rule: CAU-087 the drug behind the wire is more than the label of liquid polidocanol allows in a session

    # 40 cm at the customary 0.25 mL/cm is the volume of the label
    @CAU-087
    Scenario Outline: <kind>: <technique>, length <length>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the straight length: 10 cm
      And the case says the weight: 150 kg
      And the case says the length: <length>
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then CAU-087 <says>
      And CAU-087 would caution moderately

      Examples:
        | kind    | technique        | length       | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical  | 50 cm        | polidocanol                             | none         | speaks      |
        | hit     | mechanochemical  | 40.05 cm     | polidocanol                             | none         | speaks      |
        | limit   | mechanochemical  | 40 cm        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical  | 30 cm        | polidocanol                             | none         | stays quiet |
        | miss    | adhesive         | 50 cm        | polidocanol                             | none         | stays quiet |
        | miss    | foam-polidocanol | 90 cm        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical  | 50 cm        | sodium-tetradecyl-sulphate              | none         | stays quiet |
        | miss    | mechanochemical  | 50 cm        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | unknown | mechanochemical  | not recorded | polidocanol                             | none         | is in doubt |
        | unknown | mechanochemical  | 50 cm        | polidocanol                             | not recorded | is in doubt |
        | unknown | mechanochemical  | 50 cm        | not recorded                            | none         | is in doubt |
