Feature: Where does the glue begin?

  Rule: SET-021 glue begins well below the deep junction

    @SET-021
    Scenario Outline: <kind>: <technique>, vein <vein>, distance to the deep junction <distance to the deep junction>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the distance to the deep junction: <distance to the deep junction>
      When <technique> is considered
      Then SET-021 <says>
      And SET-021 would set the distance of the tip from the deep junction to 5 cm

      Examples:
        | kind    | technique         | vein            | distance to the deep junction | says        |
        | hit     | adhesive          | great-saphenous | 0 cm                          | speaks      |
        | limit   | adhesive          | great-saphenous | 5 cm                          | speaks      |
        | miss    | adhesive          | great-saphenous | 10 cm                         | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 0 cm                          | stays quiet |
        | miss    | adhesive          | tributary       | 0 cm                          | stays quiet |
        | unknown | adhesive          | great-saphenous | not recorded                  | is in doubt |
