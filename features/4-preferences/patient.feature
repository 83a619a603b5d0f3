Feature: What suits this patient?

  Scenario: needles set the order for a patient averse to them
    Given a sound leg
    And the case says needle aversion: yes
    When laser-1470-radial is considered
    Then it stands as careful
    When adhesive is considered
    Then it stands as suitable
    And it comes before laser-1470-radial

  Rule: PRE-034 a technique without tumescence spares a patient averse to needles

    @PRE-034
    Scenario Outline: <kind>: <technique>, needle aversion <needle aversion>
      Given a sound leg
      And the case says needle aversion: <needle aversion>
      When <technique> is considered
      Then PRE-034 <says>
      And PRE-034 would prefer moderately

      Examples:
        | kind    | technique          | needle aversion | says        |
        | hit     | adhesive           | yes             | speaks      |
        | hit     | focused-ultrasound | yes             | speaks      |
        | hit     | mechanochemical    | yes             | speaks      |
        | miss    | adhesive           | no              | stays quiet |
        | miss    | laser-1470-radial  | yes             | stays quiet |
        | unknown | adhesive           | not recorded    | is in doubt |
