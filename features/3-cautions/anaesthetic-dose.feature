Feature: Does the tumescence hold more anaesthetic than is proven safe?

  Rule: CAU-047 the tumescence holds more lidocaine than was shown to be free of symptoms

    @CAU-047
    Scenario Outline: <kind>: <technique>, length <length>, weight <weight>
      Given a sound leg
      And the case says the length: <length>
      And the case says the weight: <weight>
      When <technique> is considered
      Then CAU-047 <says>
      And CAU-047 would caution moderately

      Examples:
        | kind    | technique         | length       | weight       | says        |
        | hit     | laser-1470-radial | 70 cm        | 40 kg        | speaks      |
        | hit     | laser-1470-radial | 62 cm        | 40 kg        | speaks      |
        | limit   | laser-1470-radial | 60 cm        | 40 kg        | stays quiet |
        | miss    | laser-1470-radial | 35 cm        | 70 kg        | stays quiet |
        | miss    | foam-polidocanol  | 70 cm        | 40 kg        | stays quiet |
        | unknown | laser-1470-radial | 35 cm        | not recorded | is in doubt |
        | unknown | laser-1470-radial | not recorded | 70 kg        | is in doubt |

  Rule: CAU-048 the tumescence holds more lidocaine than is allowed without adrenaline

    @CAU-048
    Scenario Outline: <kind>: <technique>, whether the tumescent mix holds adrenaline <whether the tumescent mix holds adrenaline>, length <length>, weight <weight>
      Given a sound leg
      And the case says the straight length: 20 cm
      And the case says whether the tumescent mix holds adrenaline: <whether the tumescent mix holds adrenaline>
      And the case says the length: <length>
      And the case says the weight: <weight>
      When <technique> is considered
      Then CAU-048 <says>
      And CAU-048 would caution strongly

      Examples:
        | kind    | technique         | whether the tumescent mix holds adrenaline | length  | weight       | says        |
        | hit     | laser-1470-radial | no                                         | 35 cm   | 70 kg        | speaks      |
        | hit     | laser-1470-radial | no                                         | 36.4 cm | 80 kg        | speaks      |
        | limit   | laser-1470-radial | no                                         | 36 cm   | 80 kg        | stays quiet |
        | miss    | laser-1470-radial | no                                         | 20 cm   | 70 kg        | stays quiet |
        | miss    | laser-1470-radial | yes                                        | 35 cm   | 70 kg        | stays quiet |
        | miss    | foam-polidocanol  | no                                         | 35 cm   | 70 kg        | stays quiet |
        | unknown | laser-1470-radial | not recorded                               | 35 cm   | 70 kg        | is in doubt |
        | unknown | laser-1470-radial | no                                         | 35 cm   | not recorded | is in doubt |

  Rule: CAU-073 lidocaine is broken down slowly in this patient

    @CAU-073
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-073 <says>
      And CAU-073 would caution moderately

      Examples:
        | kind    | technique         | history of conditions  | says        |
        | hit     | laser-1470-radial | liver-failure          | speaks      |
        | hit     | rf-segmental-7cm  | lidocaine-slowing-drug | speaks      |
        | miss    | laser-1470-radial | none                   | stays quiet |
        | miss    | adhesive          | liver-failure          | stays quiet |
        | unknown | laser-1470-radial | not recorded           | is in doubt |
