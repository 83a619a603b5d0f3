Feature: Can the focus be brought to the vein and nothing else?

  Rule: EXC-022 the vein lies too shallow for the focus

    @EXC-022
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then EXC-022 <says>

      Examples:
        | kind    | technique          | depth to the skin | says        |
        | hit     | focused-ultrasound | 4.9 mm            | speaks      |
        | limit   | focused-ultrasound | 5 mm              | stays quiet |
        | miss    | focused-ultrasound | 15 mm             | stays quiet |
        | miss    | foam-polidocanol   | 3 mm              | stays quiet |
        | unknown | focused-ultrasound | not recorded      | is in doubt |

  Rule: EXC-023 the vein lies too deep for the focus

    @EXC-023
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then EXC-023 <says>

      Examples:
        | kind    | technique          | depth to the skin | says        |
        | hit     | focused-ultrasound | 25.1 mm           | speaks      |
        | limit   | focused-ultrasound | 25 mm             | stays quiet |
        | miss    | focused-ultrasound | 15 mm             | stays quiet |
        | miss    | laser-1470-radial  | 30 mm             | stays quiet |
        | unknown | focused-ultrasound | not recorded      | is in doubt |

  Rule: EXC-024 a nerve lies within reach of the focus

    @EXC-024
    Scenario Outline: <kind>: <technique>, gap to the nerve <gap to the nerve>
      Given a sound leg
      And the case says the gap to the nerve: <gap to the nerve>
      When <technique> is considered
      Then EXC-024 <says>

      Examples:
        | kind    | technique          | gap to the nerve | says        |
        | hit     | focused-ultrasound | 4 mm             | speaks      |
        | miss    | focused-ultrasound | 15 mm            | stays quiet |
        | miss    | laser-1470-radial  | 4 mm             | stays quiet |
        | unknown | focused-ultrasound | not recorded     | is in doubt |

  Rule: EXC-025 metal or an implant lies in the beam

    @EXC-025
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then EXC-025 <says>

      Examples:
        | kind    | technique          | history of conditions | says        |
        | hit     | focused-ultrasound | metal-in-beam-path    | speaks      |
        | miss    | focused-ultrasound | none                  | stays quiet |
        | miss    | laser-1470-radial  | metal-in-beam-path    | stays quiet |
        | unknown | focused-ultrasound | not recorded          | is in doubt |
