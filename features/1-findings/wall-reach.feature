Feature: How far into the wall does the technique kill?

  Rule: FIN-015 the agent reaches the whole wall

    @FIN-015
    Scenario Outline: <kind>: <technique>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then FIN-015 <says>

      Examples:
        | kind    | technique          | wall thickness | says        |
        | hit     | mechanochemical    | 0.3 mm         | speaks      |
        | hit     | focused-ultrasound | 0.3 mm         | speaks      |
        | hit     | foam-polidocanol   | 0.2 mm         | speaks      |
        | limit   | mechanochemical    | 0.5 mm         | speaks      |
        | miss    | mechanochemical    | 0.9 mm         | stays quiet |
        | miss    | adhesive           | 0.3 mm         | stays quiet |
        | unknown | mechanochemical    | not recorded   | is in doubt |

  Rule: FIN-016 the sclerosant stops short of the outer wall

    @FIN-016
    Scenario Outline: <kind>: <technique>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then FIN-016 <says>

      Examples:
        | kind    | technique         | wall thickness | says        |
        | hit     | foam-polidocanol  | 0.6 mm         | speaks      |
        | hit     | mechanochemical   | 0.9 mm         | speaks      |
        | limit   | mechanochemical   | 0.5 mm         | stays quiet |
        | miss    | mechanochemical   | 0.3 mm         | stays quiet |
        | miss    | laser-1470-radial | 0.9 mm         | stays quiet |
        | unknown | mechanochemical   | not recorded   | is in doubt |
