Feature: How far does the heat get in this very wall?

  Rule: PRE-039 the heat leaves the outer wall alive

    @PRE-039
    Scenario Outline: <kind>: the depth of death in walls <value>
      Given a sound leg
      And the heat model foresees the depth of death in walls: <value>
      When <technique> is considered
      Then PRE-039 <says>
      And PRE-039 would disfavour strongly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 0.6       | speaks      |
        | miss    | laser-1470-radial | 1.3       | stays quiet |
        | miss    | foam-polidocanol  | 0.6       | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: PRE-040 whether the heat reaches the outer wall cannot be decided

    @PRE-040
    Scenario Outline: <kind>: the depth of death in walls <value>
      Given a sound leg
      And the heat model foresees the chance that the whole wall dies: 0.95
      And the heat model foresees the depth of death in walls: <value>
      When <technique> is considered
      Then PRE-040 <says>
      And PRE-040 would disfavour slightly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 1         | speaks      |
        | miss    | laser-1470-radial | 1.3       | stays quiet |
        | miss    | foam-polidocanol  | 1         | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: PRE-041 the nerve would feel the heat

    @PRE-041
    Scenario Outline: <kind>: the peak at the nerve <value>
      Given a sound leg
      And the heat model foresees the peak at the nerve: <value>
      When <technique> is considered
      Then PRE-041 <says>
      And PRE-041 would disfavour slightly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 47 Cel    | speaks      |
        | limit   | laser-1470-radial | 45 Cel    | speaks      |
        | miss    | laser-1470-radial | 40 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 47 Cel    | stays quiet |
        | miss    | laser-1470-radial | 44.5 Cel  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: PRE-042 the skin would feel the heat

    @PRE-042
    Scenario Outline: <kind>: the peak at the skin <value>
      Given a sound leg
      And the heat model foresees the peak at the skin: <value>
      When <technique> is considered
      Then PRE-042 <says>
      And PRE-042 would disfavour slightly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 47 Cel    | speaks      |
        | limit   | laser-1470-radial | 45 Cel    | speaks      |
        | miss    | laser-1470-radial | 40 Cel    | stays quiet |
        | miss    | foam-polidocanol  | 47 Cel    | stays quiet |
        | miss    | laser-1470-radial | 44.5 Cel  | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: PRE-044 the nerve would take some heat

    @PRE-044
    Scenario Outline: <kind>: the heat dose at the nerve <value>
      Given a sound leg
      And the heat model foresees the heat dose at the nerve: <value>
      When <technique> is considered
      Then PRE-044 <says>
      And PRE-044 would disfavour slightly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 20 min    | speaks      |
        | limit   | laser-1470-radial | 10 min    | speaks      |
        | miss    | laser-1470-radial | 2 min     | stays quiet |
        | miss    | foam-polidocanol  | 20 min    | stays quiet |
        | miss    | laser-1470-radial | 9.5 min   | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |

  Rule: PRE-045 the skin would take some heat

    @PRE-045
    Scenario Outline: <kind>: the heat dose at the skin <value>
      Given a sound leg
      And the heat model foresees the heat dose at the skin: <value>
      When <technique> is considered
      Then PRE-045 <says>
      And PRE-045 would disfavour slightly

      Examples:
        | kind    | technique         | value     | says        |
        | hit     | laser-1470-radial | 20 min    | speaks      |
        | limit   | laser-1470-radial | 10 min    | speaks      |
        | miss    | laser-1470-radial | 2 min     | stays quiet |
        | miss    | foam-polidocanol  | 20 min    | stays quiet |
        | miss    | laser-1470-radial | 9.5 min   | stays quiet |
        | unknown | laser-1470-radial | not known | is in doubt |
