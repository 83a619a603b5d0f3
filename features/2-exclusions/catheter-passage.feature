Feature: Will the catheter go where it must?

  Rule: EXC-016 the course turns a catheter back

    @EXC-016
    Scenario Outline: <kind>: <technique>, course <course>, straight length <straight length>
      Given a sound leg
      And the case says the course: <course>
      And the case says the straight length: <straight length>
      When <technique> is considered
      Then EXC-016 <says>

      Examples:
        | kind    | technique         | course       | straight length | says        |
        | hit     | laser-1470-radial | very-winding | 20 cm           | speaks      |
        | hit     | adhesive          | winding      | 3 cm            | speaks      |
        | miss    | laser-1470-radial | straight     | 35 cm           | stays quiet |
        | miss    | mechanochemical   | winding      | 12 cm           | stays quiet |
        | miss    | foam-polidocanol  | very-winding | 3 cm            | stays quiet |
        | unknown | laser-1470-radial | not recorded | 20 cm           | is in doubt |
        | unknown | laser-1470-radial | winding      | not recorded    | is in doubt |

  Rule: EXC-017 the long heating element does not fit the straight stretch

    @EXC-017
    Scenario Outline: <kind>: <technique>, straight length <straight length>
      Given a sound leg
      And the case says the straight length: <straight length>
      When <technique> is considered
      Then EXC-017 <says>

      Examples:
        | kind    | technique        | straight length | says        |
        | hit     | rf-segmental-7cm | 6.9 cm          | speaks      |
        | limit   | rf-segmental-7cm | 7 cm            | stays quiet |
        | miss    | rf-segmental-7cm | 35 cm           | stays quiet |
        | miss    | rf-segmental-3cm | 6.9 cm          | stays quiet |
        | unknown | rf-segmental-7cm | not recorded    | is in doubt |

  Rule: EXC-018 even the short heating element does not fit the straight stretch

    @EXC-018
    Scenario Outline: <kind>: <technique>, straight length <straight length>
      Given a sound leg
      And the case says the straight length: <straight length>
      When <technique> is considered
      Then EXC-018 <says>

      Examples:
        | kind    | technique         | straight length | says        |
        | hit     | rf-segmental-3cm  | 2.9 cm          | speaks      |
        | limit   | rf-segmental-3cm  | 3 cm            | stays quiet |
        | miss    | rf-segmental-3cm  | 35 cm           | stays quiet |
        | miss    | laser-1470-radial | 2.9 cm          | stays quiet |
        | unknown | rf-segmental-3cm  | not recorded    | is in doubt |
