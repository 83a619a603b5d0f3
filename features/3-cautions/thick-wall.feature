Feature: Is the wall too thick for a sclerosant to reach through?

  Rule: CAU-051 the wall is thick and the sclerosant stops short of its outer coat

    @CAU-051
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then CAU-051 <says>
      And CAU-051 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | wall thickness | says        |
        | hit     | foam-polidocanol  | 6 mm           | 0.7 mm         | speaks      |
        | hit     | mechanochemical   | 6 mm           | 0.9 mm         | speaks      |
        | hit     | foam-polidocanol  | 6 mm           | 0.62 mm        | speaks      |
        | limit   | foam-polidocanol  | 7 mm           | 0.6 mm         | stays quiet |
        | miss    | foam-polidocanol  | 6 mm           | 0.5 mm         | stays quiet |
        | miss    | laser-1470-radial | 6 mm           | 0.9 mm         | stays quiet |
        | unknown | foam-polidocanol  | 6 mm           | not recorded   | is in doubt |
