Feature: Does the patient take disulfiram?

  Rule: CAU-040 polidocanol foam brings alcohol to a patient on disulfiram

    @CAU-040
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-040 <says>
      And CAU-040 would caution moderately

      Examples:
        | kind    | technique        | history of conditions | says        |
        | hit     | foam-polidocanol | disulfiram-use        | speaks      |
        | miss    | foam-polidocanol | none                  | stays quiet |
        | miss    | foam-sts         | disulfiram-use        | stays quiet |
        | unknown | foam-polidocanol | not recorded          | is in doubt |

  Rule: CAU-041 the only drug for mechanochemical closure brings alcohol to a patient on disulfiram

    @CAU-041
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>, sclerosants of the room <sclerosants of the room>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      And the case says the sclerosants of the room: <sclerosants of the room>
      When <technique> is considered
      Then CAU-041 <says>
      And CAU-041 would caution moderately

      Examples:
        | kind    | technique       | history of conditions | sclerosants of the room                 | says        |
        | hit     | mechanochemical | disulfiram-use        | polidocanol                             | speaks      |
        | miss    | mechanochemical | disulfiram-use        | polidocanol, sodium-tetradecyl-sulphate | stays quiet |
        | miss    | mechanochemical | none                  | polidocanol                             | stays quiet |
        | miss    | foam-sts        | disulfiram-use        | polidocanol                             | stays quiet |
        | unknown | mechanochemical | not recorded          | polidocanol                             | is in doubt |
        | unknown | mechanochemical | disulfiram-use        | not recorded                            | is in doubt |
