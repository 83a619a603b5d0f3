Feature: Can a catheter find its way through this vein?

  Rule: FIN-004 the lumen is small for a catheter

    @FIN-004
    Scenario Outline: <kind>: lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When laser-1470-radial is considered
      Then FIN-004 <says>

      Examples:
        | kind    | lumen diameter | says        |
        | hit     | 2.9 mm         | speaks      |
        | limit   | 3 mm           | stays quiet |
        | miss    | 6 mm           | stays quiet |
        | unknown | not recorded   | is in doubt |

  Rule: FIN-005 a straight course lets a catheter pass

    @FIN-005
    Scenario Outline: <kind>: course <course>
      Given a sound leg
      And the case says the course: <course>
      When laser-1470-radial is considered
      Then FIN-005 <says>

      Examples:
        | kind    | course       | says        |
        | hit     | straight     | speaks      |
        | miss    | winding      | stays quiet |
        | miss    | very-winding | stays quiet |
        | unknown | not recorded | is in doubt |

  Rule: FIN-006 a winding vein still holds a straight stretch long enough for a catheter

    @FIN-006
    Scenario Outline: <kind>: course <course>, straight length <straight length>
      Given a sound leg
      And the case says the course: <course>
      And the case says the straight length: <straight length>
      When laser-1470-radial is considered
      Then FIN-006 <says>

      Examples:
        | kind    | course       | straight length | says        |
        | hit     | winding      | 12 cm           | speaks      |
        | limit   | winding      | 5 cm            | speaks      |
        | miss    | winding      | 4.9 cm          | stays quiet |
        | miss    | very-winding | 12 cm           | stays quiet |
        | unknown | winding      | not recorded    | is in doubt |
        | unknown | not recorded | 12 cm           | is in doubt |
