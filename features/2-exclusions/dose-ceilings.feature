Feature: Would one session go over what the body bears?

  Rule: EXC-030 the tumescence for this segment alone holds too much lidocaine

    @EXC-030
    Scenario Outline: <kind>: <technique>, length <length>, weight <weight>
      Given a sound leg
      And the case says the length: <length>
      And the case says the weight: <weight>
      When <technique> is considered
      Then EXC-030 <says>

      Examples:
        | kind    | technique         | length       | weight       | says        |
        | hit     | laser-1470-radial | 90 cm        | 30 kg        | speaks      |
        | hit     | laser-1470-radial | 85 cm        | 30 kg        | speaks      |
        | limit   | laser-1470-radial | 84 cm        | 30 kg        | stays quiet |
        | miss    | laser-1470-radial | 35 cm        | 70 kg        | stays quiet |
        | miss    | foam-polidocanol  | 90 cm        | 30 kg        | stays quiet |
        | unknown | laser-1470-radial | 35 cm        | not recorded | is in doubt |
        | unknown | laser-1470-radial | not recorded | 70 kg        | is in doubt |

  Rule: EXC-039 the tumescence holds more plain lidocaine than was borne beside the saphenous vein

    @EXC-039
    Scenario Outline: <kind>: <technique>, whether the tumescent mix holds adrenaline <whether the tumescent mix holds adrenaline>, length <length>, weight <weight>
      Given a sound leg
      And the case says whether the tumescent mix holds adrenaline: <whether the tumescent mix holds adrenaline>
      And the case says the length: <length>
      And the case says the weight: <weight>
      When <technique> is considered
      Then EXC-039 <says>

      Examples:
        | kind    | technique         | whether the tumescent mix holds adrenaline | length | weight       | says        |
        | hit     | laser-1470-radial | no                                         | 62 cm  | 40 kg        | speaks      |
        | hit     | steam             | no                                         | 62 cm  | 40 kg        | speaks      |
        | limit   | laser-1470-radial | no                                         | 60 cm  | 40 kg        | stays quiet |
        | miss    | laser-1470-radial | no                                         | 35 cm  | 70 kg        | stays quiet |
        | miss    | laser-1470-radial | yes                                        | 62 cm  | 40 kg        | stays quiet |
        | miss    | adhesive          | no                                         | 62 cm  | 40 kg        | stays quiet |
        | unknown | laser-1470-radial | not recorded                               | 62 cm  | 40 kg        | is in doubt |
        | unknown | laser-1470-radial | no                                         | 62 cm  | not recorded | is in doubt |

  Rule: EXC-031 filling this segment with foam takes more polidocanol than a day allows

    # 26.525823848649225 cm of this lumen takes the daily maximum of this weight to the last digit
    @EXC-031
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>, weight <weight>
      Given a sound leg
      And the case says the straight length: 20 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      And the case says the weight: <weight>
      When <technique> is considered
      Then EXC-031 <says>

      Examples:
        | kind    | technique        | lumen diameter | length                | weight       | says        |
        | hit     | foam-polidocanol | 12 mm          | 60 cm                 | 40 kg        | speaks      |
        | hit     | foam-polidocanol | 12 mm          | 27 cm                 | 90 kg        | speaks      |
        | limit   | foam-polidocanol | 12 mm          | 26.525823848649225 cm | 90 kg        | stays quiet |
        | miss    | foam-polidocanol | 6 mm           | 35 cm                 | 70 kg        | stays quiet |
        | miss    | foam-sts         | 12 mm          | 60 cm                 | 40 kg        | stays quiet |
        | unknown | foam-polidocanol | 6 mm           | 35 cm                 | not recorded | is in doubt |
        | unknown | foam-polidocanol | not recorded   | 35 cm                 | 70 kg        | is in doubt |

  Rule: EXC-035 even the least customary drug behind the wire takes more polidocanol than a day allows

    @EXC-035
    Scenario Outline: <kind>: <technique>, length <length>, weight <weight>, sclerosants of the room <sclerosants of the room>, allergies <allergies>
      Given a sound leg
      And the case says the straight length: 10 cm
      And the case says the length: <length>
      And the case says the weight: <weight>
      And the case says the sclerosants of the room: <sclerosants of the room>
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then EXC-035 <says>

      Examples:
        | kind    | technique       | length       | weight       | sclerosants of the room                 | allergies    | says        |
        | hit     | mechanochemical | 36 cm        | 70 kg        | polidocanol                             | none         | speaks      |
        | hit     | mechanochemical | 35.05 cm     | 70 kg        | polidocanol                             | none         | speaks      |
        | limit   | mechanochemical | 35 cm        | 70 kg        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical | 20 cm        | 70 kg        | polidocanol                             | none         | stays quiet |
        | miss    | adhesive        | 80 cm        | 45 kg        | polidocanol                             | none         | stays quiet |
        | miss    | mechanochemical | 80 cm        | 45 kg        | sodium-tetradecyl-sulphate              | none         | stays quiet |
        | miss    | mechanochemical | 80 cm        | 45 kg        | polidocanol, sodium-tetradecyl-sulphate | polidocanol  | stays quiet |
        | unknown | mechanochemical | 35 cm        | not recorded | polidocanol                             | none         | is in doubt |
        | unknown | mechanochemical | not recorded | 70 kg        | polidocanol                             | none         | is in doubt |
        | unknown | mechanochemical | 80 cm        | 45 kg        | polidocanol                             | not recorded | is in doubt |

  Rule: EXC-036 filling this segment takes more tetradecyl sulphate foam than its label allows

    # 31.83098861837907 cm of this lumen holds the ceiling to the last digit
    @EXC-036
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then EXC-036 <says>

      Examples:
        | kind    | technique        | lumen diameter | length               | says        |
        | hit     | foam-sts         | 8 mm           | 40 cm                | speaks      |
        | hit     | foam-sts         | 8 mm           | 32.5 cm              | speaks      |
        | limit   | foam-sts         | 8 mm           | 31.83098861837907 cm | stays quiet |
        | miss    | foam-sts         | 6 mm           | 35 cm                | stays quiet |
        | miss    | foam-polidocanol | 8 mm           | 40 cm                | stays quiet |
        | unknown | foam-sts         | not recorded   | 35 cm                | is in doubt |
        | unknown | foam-sts         | 6 mm           | not recorded         | is in doubt |

  Rule: EXC-037 filling this segment takes more polidocanol foam than a whole cohort was given on average

    # 43.767609350271225 cm of this lumen holds the mean volume to the last digit
    @EXC-037
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then EXC-037 <says>

      Examples:
        | kind    | technique        | lumen diameter | length                | says        |
        | hit     | foam-polidocanol | 9 mm           | 40 cm                 | speaks      |
        | hit     | foam-polidocanol | 8 mm           | 44.5 cm               | speaks      |
        | limit   | foam-polidocanol | 8 mm           | 43.767609350271225 cm | stays quiet |
        | miss    | foam-polidocanol | 6 mm           | 35 cm                 | stays quiet |
        | miss    | foam-sts         | 9 mm           | 40 cm                 | stays quiet |
        | unknown | foam-polidocanol | not recorded   | 35 cm                 | is in doubt |
        | unknown | foam-polidocanol | 6 mm           | not recorded          | is in doubt |
