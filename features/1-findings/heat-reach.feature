Feature: Does the heat of the proposed setting reach the outer wall, and nothing beyond it?

  Rule: FIN-020 the heat stops short of the outer wall

    @FIN-020
    Scenario Outline: <kind>: the depth of death in walls <value>
      Given a sound leg
      And the heat model foresees the depth of death in walls: <value>
      When <technique> is considered
      Then FIN-020 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 0.89      | speaks      |
        | limit   | laser-1470-radial | 0.9       | stays quiet |
        | miss    | laser-1470-radial | 1.3       | stays quiet |
        | miss    | foam-polidocanol  | 0.89      | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-021 the heat reaches about as far as the outer wall

    @FIN-021
    Scenario Outline: <kind>: the depth of death in walls <value>
      Given a sound leg
      And the heat model foresees the depth of death in walls: <value>
      When <technique> is considered
      Then FIN-021 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 1         | speaks      |
        | limit   | laser-1470-radial | 0.9       | speaks      |
        | limit   | laser-1470-radial | 1.1       | speaks      |
        | miss    | laser-1470-radial | 1.11      | stays quiet |
        | miss    | foam-polidocanol  | 1         | stays quiet |
        | miss    | laser-1470-radial | 0.89      | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-022 the heat reaches past the outer wall but not surely enough

    @FIN-022
    Scenario Outline: <kind>: the chance that the whole wall dies <chance>, depth <depth>
      Given a sound leg
      And the heat model foresees the depth of death in walls: <depth>
      And the heat model foresees the chance that the whole wall dies: <chance>
      When <technique> is considered
      Then FIN-022 <says>

      Examples:
        | kind    | technique         | depth | chance    | says        |
        | hit     | laser-1470-radial | 1.3   | 0.79      | speaks      |
        | limit   | laser-1470-radial | 1.3   | 0.8       | stays quiet |
        | limit   | laser-1470-radial | 1.1   | 0.79      | stays quiet |
        | miss    | laser-1470-radial | 1.3   | 0.95      | stays quiet |
        | miss    | foam-polidocanol  | 1.3   | 0.79      | stays quiet |
        | miss    | laser-1470-radial | 0.95  | 0.79      | stays quiet |
        | unknown | laser-1470-radial | 1.3   | not known | is in doubt |

  Rule: FIN-023 the heat kills the whole wall

    @FIN-023
    Scenario Outline: <kind>: the chance that the whole wall dies <chance>, depth <depth>
      Given a sound leg
      And the heat model foresees the depth of death in walls: <depth>
      And the heat model foresees the chance that the whole wall dies: <chance>
      When <technique> is considered
      Then FIN-023 <says>
      And FIN-023 would find whole-wall-reached

      Examples:
        | kind    | technique         | depth | chance    | says        |
        | hit     | laser-1470-radial | 1.3   | 0.95      | speaks      |
        | limit   | laser-1470-radial | 1.3   | 0.8       | speaks      |
        | limit   | laser-1470-radial | 1.1   | 0.95      | stays quiet |
        | miss    | laser-1470-radial | 1.3   | 0.79      | stays quiet |
        | miss    | foam-polidocanol  | 1.3   | 0.95      | stays quiet |
        | miss    | laser-1470-radial | 1     | 0.95      | stays quiet |
        | unknown | laser-1470-radial | 1.3   | not known | is in doubt |

  Rule: FIN-024 the setting would char the wall

    @FIN-024
    Scenario Outline: <kind>: the chance of charring <value>
      Given a sound leg
      And the heat model foresees the chance of charring: <value>
      When <technique> is considered
      Then FIN-024 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 0.2       | speaks      |
        | hit     | laser-1470-radial | 0.155     | speaks      |
        | limit   | laser-1470-radial | 0.15      | stays quiet |
        | miss    | laser-1470-radial | 0.05      | stays quiet |
        | miss    | foam-polidocanol  | 0.2       | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-025 the setting would dry the wall through

    @FIN-025
    Scenario Outline: <kind>: the drying of the wall <value>
      Given a sound leg
      And the heat model foresees the drying of the wall: <value>
      When <technique> is considered
      Then FIN-025 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 1.2       | speaks      |
        | limit   | laser-1470-radial | 1         | speaks      |
        | miss    | laser-1470-radial | 0.9       | stays quiet |
        | miss    | foam-polidocanol  | 1.2       | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-026 the nerve would grow too hot

    @FIN-026
    Scenario Outline: <kind>: the peak at the nerve <value>
      Given a sound leg
      And the heat model foresees the peak at the nerve: <value>
      When <technique> is considered
      Then FIN-026 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 55 Cel    | speaks      |
        | limit   | laser-1470-radial | 50 Cel    | speaks      |
        | miss    | laser-1470-radial | 44 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 55 Cel    | stays quiet |
        | miss    | laser-1470-radial | 49.5 Cel  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-027 the nerve would take too much heat

    @FIN-027
    Scenario Outline: <kind>: the heat dose at the nerve <value>
      Given a sound leg
      And the heat model foresees the heat dose at the nerve: <value>
      When <technique> is considered
      Then FIN-027 <says>
      And FIN-027 would find warms-the-nerve

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 90 min    | speaks      |
        | limit   | laser-1470-radial | 40 min    | speaks      |
        | miss    | laser-1470-radial | 3 min     | stays quiet |
        | miss    | foam-polidocanol  | 90 min    | stays quiet |
        | miss    | laser-1470-radial | 39.5 min  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-028 the skin would grow too hot

    @FIN-028
    Scenario Outline: <kind>: the peak at the skin <value>
      Given a sound leg
      And the heat model foresees the peak at the skin: <value>
      When <technique> is considered
      Then FIN-028 <says>

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 55 Cel    | speaks      |
        | limit   | laser-1470-radial | 50 Cel    | speaks      |
        | miss    | laser-1470-radial | 44 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 55 Cel    | stays quiet |
        | miss    | laser-1470-radial | 49.5 Cel  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: FIN-029 the skin would take too much heat

    @FIN-029
    Scenario Outline: <kind>: the heat dose at the skin <value>
      Given a sound leg
      And the heat model foresees the heat dose at the skin: <value>
      When <technique> is considered
      Then FIN-029 <says>
      And FIN-029 would find warms-the-skin

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 90 min    | speaks      |
        | limit   | laser-1470-radial | 40 min    | speaks      |
        | miss    | laser-1470-radial | 3 min     | stays quiet |
        | miss    | foam-polidocanol  | 90 min    | stays quiet |
        | miss    | laser-1470-radial | 39.5 min  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |
