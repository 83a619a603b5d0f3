Feature: Will a catheter reach the whole of the vein?

  Rule: CAU-021 a catheter reaches only the straight stretch of a winding vein

    @CAU-021
    Scenario Outline: <kind>: <technique>, course <course>
      Given a sound leg
      And the case says the course: <course>
      When <technique> is considered
      Then CAU-021 <says>
      And CAU-021 would caution moderately

      Examples:
        | kind    | technique         | course       | says        |
        | hit     | laser-1470-radial | winding      | speaks      |
        | hit     | adhesive          | winding      | speaks      |
        | miss    | laser-1470-radial | straight     | stays quiet |
        | miss    | foam-polidocanol  | winding      | stays quiet |
        | unknown | laser-1470-radial | not recorded | is in doubt |
