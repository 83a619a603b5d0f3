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

  Rule: PRE-049 heat makes a second treatment of a trunk less likely

    @PRE-049
    Scenario Outline: <kind>: <technique>, the vein <vein>, preferences <preferences>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the preferences: <preferences>
      When <technique> is considered
      Then PRE-049 <says>
      And PRE-049 would prefer slightly

      Examples:
        | kind    | technique         | vein            | preferences                 | says        |
        | hit     | laser-1470-radial | great-saphenous | avoid-repeat                | speaks      |
        | hit     | rf-segmental-7cm  | small-saphenous | avoid-needles, avoid-repeat | speaks      |
        | miss    | laser-1470-radial | great-saphenous | avoid-needles               | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | none                        | stays quiet |
        | miss    | microwave         | great-saphenous | avoid-repeat                | stays quiet |
        | miss    | steam             | great-saphenous | avoid-repeat                | stays quiet |
        | miss    | foam-polidocanol  | great-saphenous | avoid-repeat                | stays quiet |
        | miss    | laser-1470-radial | tributary       | avoid-repeat                | stays quiet |
        | unknown | laser-1470-radial | great-saphenous | not recorded                | is in doubt |

  Rule: PRE-050 a technique of few punctures suits a patient who would rather avoid needles

    @PRE-050
    Scenario Outline: <kind>: <technique>, preferences <preferences>
      Given a sound leg
      And the case says the preferences: <preferences>
      When <technique> is considered
      Then PRE-050 <says>
      And PRE-050 would prefer slightly

      Examples:
        | kind    | technique          | preferences   | says        |
        | hit     | adhesive           | avoid-needles | speaks      |
        | hit     | mechanochemical    | avoid-needles | speaks      |
        | hit     | focused-ultrasound | avoid-needles | speaks      |
        | miss    | adhesive           | avoid-repeat  | stays quiet |
        | miss    | laser-1470-radial  | avoid-needles | stays quiet |
        | unknown | adhesive           | not recorded  | is in doubt |
