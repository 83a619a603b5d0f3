Feature: Can the patient walk the drug out of the deep veins?

  Rule: EXC-026 a sclerosant would meet the slow flow of a bedbound patient

    @EXC-026
    Scenario Outline: <kind>: <technique>, mobility <mobility>
      Given a sound leg
      And the case says the mobility: <mobility>
      When <technique> is considered
      Then EXC-026 <says>

      Examples:
        | kind    | technique         | mobility     | says        |
        | hit     | foam-polidocanol  | bedbound     | speaks      |
        | hit     | mechanochemical   | bedbound     | speaks      |
        | miss    | foam-polidocanol  | limited      | stays quiet |
        | miss    | laser-1470-radial | bedbound     | stays quiet |
        | unknown | foam-polidocanol  | not recorded | is in doubt |
