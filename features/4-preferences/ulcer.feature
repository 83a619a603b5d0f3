Feature: Does an open ulcer ask for early closure?

  Rule: PRE-046 an open ulcer asks for early closure from within

    @PRE-046
    Scenario Outline: <kind>: <technique>, vein <vein>, clinical class <clinical class>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the clinical class: <clinical class>
      When <technique> is considered
      Then PRE-046 <says>
      And PRE-046 would prefer slightly

      Examples:
        | kind    | technique          | vein            | clinical class | says        |
        | hit     | laser-1470-radial  | great-saphenous | C6             | speaks      |
        | hit     | foam-polidocanol   | small-saphenous | C6r            | speaks      |
        | hit     | mechanochemical    | great-saphenous | C6             | speaks      |
        | hit     | adhesive           | great-saphenous | C6             | speaks      |
        | miss    | laser-1470-radial  | great-saphenous | C5             | stays quiet |
        | miss    | focused-ultrasound | great-saphenous | C6             | stays quiet |
        | miss    | foam-polidocanol   | tributary       | C6             | stays quiet |
        | unknown | laser-1470-radial  | great-saphenous | not recorded   | is in doubt |
