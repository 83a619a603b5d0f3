Feature: Does the heat that is needed here harm what it should spare?

  Rule: CAU-058 the best setting found chars the wall

    @CAU-058
    Scenario Outline: <kind>: the chance of charring <value>
      Given a sound leg
      And the heat model foresees the chance of charring: <value>
      When <technique> is considered
      Then CAU-058 <says>
      And CAU-058 would caution moderately

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 0.9       | speaks      |
        | miss    | laser-1470-radial | 0.05      | stays quiet |
        | miss    | foam-polidocanol  | 0.9       | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: CAU-059 the best setting found dries the wall through

    @CAU-059
    Scenario Outline: <kind>: the drying of the wall <value>
      Given a sound leg
      And the heat model foresees the drying of the wall: <value>
      When <technique> is considered
      Then CAU-059 <says>
      And CAU-059 would caution moderately

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 1.2       | speaks      |
        | miss    | laser-1470-radial | 0.3       | stays quiet |
        | miss    | foam-polidocanol  | 1.2       | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: CAU-060 the nerve is not spared at the recorded gap

    @CAU-060
    Scenario Outline: <kind>: the peak at the nerve <value>
      Given a sound leg
      And the heat model foresees the peak at the nerve: <value>
      When <technique> is considered
      Then CAU-060 <says>
      And CAU-060 would caution strongly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 55 Cel    | speaks      |
        | miss    | laser-1470-radial | 44 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 55 Cel    | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: CAU-061 the skin is not spared at the recorded depth

    @CAU-061
    Scenario Outline: <kind>: the peak at the skin <value>
      Given a sound leg
      And the heat model foresees the peak at the skin: <value>
      When <technique> is considered
      Then CAU-061 <says>
      And CAU-061 would caution strongly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 55 Cel    | speaks      |
        | miss    | laser-1470-radial | 44 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 55 Cel    | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |
