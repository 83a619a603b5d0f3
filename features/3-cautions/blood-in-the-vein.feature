Feature: Will the vein be empty when it is heated?

  Rule: CAU-052 the heated vein will hold blood

    @CAU-052
    Scenario Outline: <kind>: <technique>, whether the room has a tilt table <whether the room has a tilt table>
      Given a sound leg
      And the case says whether the room has a tilt table: <whether the room has a tilt table>
      When <technique> is considered
      Then CAU-052 <says>
      And CAU-052 would caution moderately

      Examples:
        | kind    | technique         | whether the room has a tilt table | says        |
        | hit     | laser-1470-radial | no                                | speaks      |
        | miss    | laser-1470-radial | yes                               | stays quiet |
        | miss    | adhesive          | no                                | stays quiet |
        | unknown | laser-1470-radial | not recorded                      | is in doubt |
