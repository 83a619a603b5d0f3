Feature: Could the drug reach a child at the breast?

  Rule: CAU-003 a sclerosant meets breast feeding

    @CAU-003
    Scenario Outline: <kind>: <technique>, breast feeding <breast feeding>, sex <sex>
      Given a sound leg
      And the case says breast feeding: <breast feeding>
      And the case says the sex: <sex>
      When <technique> is considered
      Then CAU-003 <says>
      And CAU-003 would caution moderately

      Examples:
        | kind    | technique        | breast feeding | sex          | says        |
        | hit     | foam-polidocanol | yes            | female       | speaks      |
        | miss    | foam-polidocanol | no             | female       | stays quiet |
        | miss    | adhesive         | yes            | female       | stays quiet |
        | miss    | foam-polidocanol | not recorded   | male         | stays quiet |
        | unknown | foam-polidocanol | not recorded   | female       | is in doubt |
        | hit     | foam-polidocanol | yes            | not recorded | speaks      |
        | unknown | foam-polidocanol | not recorded   | not recorded | is in doubt |
