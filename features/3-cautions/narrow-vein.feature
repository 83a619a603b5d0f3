Feature: Is the vein too narrow for a heating catheter?

  Rule: CAU-028 a heating catheter fills the narrow lumen

    @CAU-028
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-028 <says>
      And CAU-028 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | laser-1470-radial | 2.5 mm         | speaks      |
        | miss    | laser-1470-radial | 6 mm           | stays quiet |
        | miss    | foam-polidocanol  | 2.5 mm         | stays quiet |
        | unknown | laser-1470-radial | not recorded   | is in doubt |
