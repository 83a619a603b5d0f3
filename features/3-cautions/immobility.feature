Feature: Will the patient be up and about after the closure?

  Rule: CAU-020 the patient is bedbound

    @CAU-020
    Scenario Outline: <kind>: <technique>, mobility <mobility>
      Given a sound leg
      And the case says the mobility: <mobility>
      When <technique> is considered
      Then CAU-020 <says>
      And CAU-020 would caution moderately

      Examples:
        | kind    | technique         | mobility     | says        |
        | hit     | laser-1470-radial | bedbound     | speaks      |
        | hit     | adhesive          | bedbound     | speaks      |
        | miss    | laser-1470-radial | walks        | stays quiet |
        | miss    | foam-polidocanol  | bedbound     | stays quiet |
        | unknown | laser-1470-radial | not recorded | is in doubt |
