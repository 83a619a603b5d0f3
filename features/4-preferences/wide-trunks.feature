Feature: What suits a wide trunk?

  Scenario: a large trunk is for heat, also under anticoagulation
    Given a sound leg
    And the case says the lumen diameter: 13 mm
    And the case says the anticoagulation: therapeutic
    When rf-segmental-7cm is considered
    Then it stands as careful
    And it comes before adhesive
    And it comes before focused-ultrasound
    And it comes before foam-polidocanol
    When mechanochemical is considered
    Then it stands as excluded

  Rule: PRE-024 heat suits a large trunk

    @PRE-024
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then PRE-024 <says>
      And PRE-024 would prefer moderately

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | laser-1470-radial | 12 mm          | speaks      |
        | hit     | rf-segmental-7cm  | 11 mm          | speaks      |
        | miss    | laser-1470-radial | 6 mm           | stays quiet |
        | miss    | foam-polidocanol  | 12 mm          | stays quiet |
        | unknown | laser-1470-radial | not recorded   | is in doubt |

  Rule: PRE-025 foam does not suit a large trunk

    @PRE-025
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then PRE-025 <says>
      And PRE-025 would disfavour strongly

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | foam-polidocanol  | 12 mm          | speaks      |
        | hit     | foam-sts          | 11 mm          | speaks      |
        | miss    | foam-polidocanol  | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | 12 mm          | stays quiet |
        | unknown | foam-polidocanol  | not recorded   | is in doubt |
