Feature: Does filling the vein take more sclerosant than one session allows?

  Rule: CAU-049 the lumen holds more than the foam of one session

    # 19.89436788648692 cm of this lumen holds the ceiling to the last digit
    @CAU-049
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then CAU-049 <says>
      And CAU-049 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | length               | says        |
        | hit     | foam-polidocanol  | 8 mm           | 40 cm                | speaks      |
        | hit     | foam-sts          | 7 mm           | 35 cm                | speaks      |
        | limit   | foam-polidocanol  | 8 mm           | 19.89436788648692 cm | stays quiet |
        | miss    | foam-polidocanol  | 5 mm           | 30 cm                | stays quiet |
        | miss    | laser-1470-radial | 8 mm           | 40 cm                | stays quiet |
        | unknown | foam-polidocanol  | not recorded   | 35 cm                | is in doubt |
        | unknown | foam-polidocanol  | 6 mm           | not recorded         | is in doubt |

  Rule: CAU-068 the lumen holds more than the label of factory-made polidocanol microfoam allows

    # 29.841551829730378 cm of this lumen holds the ceiling to the last digit
    @CAU-068
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>, length <length>
      Given a sound leg
      And the case says the straight length: 15 cm
      And the case says the lumen diameter: <lumen diameter>
      And the case says the length: <length>
      When <technique> is considered
      Then CAU-068 <says>
      And CAU-068 would caution moderately

      Examples:
        | kind    | technique        | lumen diameter | length                | says        |
        | hit     | foam-polidocanol | 8 mm           | 40 cm                 | speaks      |
        | hit     | foam-polidocanol | 8 mm           | 30.5 cm               | speaks      |
        | limit   | foam-polidocanol | 8 mm           | 29.841551829730378 cm | stays quiet |
        | miss    | foam-polidocanol | 6 mm           | 35 cm                 | stays quiet |
        | miss    | foam-sts         | 8 mm           | 40 cm                 | stays quiet |
        | unknown | foam-polidocanol | not recorded   | 35 cm                 | is in doubt |
        | unknown | foam-polidocanol | 6 mm           | not recorded          | is in doubt |
