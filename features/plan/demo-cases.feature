# What a careful specialist expects of the invented cases in knowledge/demo, written down in its README before any advice
# was computed. Common practice, no source.
Feature: The demo cases come out as a careful specialist would expect

  Scenario: a straight thigh trunk gets heat first
    Given the demo case straight-thigh-trunk
    When laser-1470-radial is considered
    Then it stands as preferred
    And it comes before adhesive
    When adhesive is considered
    Then it comes before foam-polidocanol

  Scenario: of two first choices that are even on points, the one goes first that kills the whole wall more surely
    Given the demo case straight-thigh-trunk
    When rf-segmental-7cm is considered
    Then it stands as preferred
    And it comes before laser-1470-radial

  @HZ-02
  Scenario: below the knee beside the nerve, techniques without heat lead
    Given the demo case below-knee-trunk-near-nerve
    When mechanochemical is considered
    Then it stands as suitable
    And it comes before laser-1470-radial
    When laser-1470-radial is considered
    Then it stands as careful

  @HZ-02
  Scenario: a small saphenous vein with the sural nerve close, techniques without heat lead
    Given the demo case small-saphenous-near-sural-nerve
    When adhesive is considered
    Then it comes before laser-1470-radial
    When laser-1470-radial is considered
    Then it stands as careful

  Scenario: an accessory trunk is treated like any trunk
    Given the demo case accessory-trunk
    When rf-segmental-7cm is considered
    Then it stands as preferred
    And it comes before adhesive
    When adhesive is considered
    Then it comes before foam-polidocanol

  @HZ-26
  Scenario Outline: a winding tributary with a thin wall is foamed, no catheter passes (<technique>)
    Given the demo case winding-tributary-thin-wall
    When <technique> is considered
    Then it stands as <standing>

    Examples:
      | technique          | standing  |
      | foam-polidocanol   | preferred |
      | laser-1470-radial  | excluded  |
      | rf-segmental-7cm   | excluded  |
      | mechanochemical    | excluded  |
      | adhesive           | excluded  |
      | focused-ultrasound | excluded  |

  @HZ-06 @HZ-26
  Scenario: recurrent channels in the groin are foamed, never heated
    Given the demo case recurrent-groin-channels
    When foam-polidocanol is considered
    Then it comes before focused-ultrasound
    When laser-1470-radial is considered
    Then it stands as excluded

  @HZ-19
  Scenario: a vein in spasm is judged by its relaxed state
    Given the demo case vein-in-spasm
    When laser-1470-radial is considered
    Then it stands as preferred

  @HZ-23
  Scenario: where only foam is in the room, the better choice is named as not in the room
    Given the demo case foam-only-room
    When foam-polidocanol is considered
    Then it stands as careful
    When laser-1470-radial is considered
    Then it stands as not-in-room

  @HZ-14
  Scenario: pregnancy defers everything
    Given the demo case pregnancy
    When laser-1470-radial is considered
    Then it stands as excluded
    And nothing is ranked

  @HZ-16
  Scenario Outline: without the wall thickness, what acts on the wall is to be measured first (<technique>)
    Given the demo case missing-wall-thickness
    When <technique> is considered
    Then it stands as measure-first

    Examples:
      | technique          |
      | laser-1470-radial  |
      | foam-polidocanol   |
      | focused-ultrasound |

  @HZ-10
  Scenario: without the wall thickness, mechanochemical closure falls on the drug for the length all the same
    Given the demo case missing-wall-thickness
    When mechanochemical is considered
    Then it stands as excluded

  @HZ-06
  Scenario: a very wide trunk under full anticoagulation keeps heat, with care
    Given the demo case large-trunk-anticoagulated
    When laser-1470-radial is considered
    Then it stands as careful
    And it comes before foam-polidocanol
    When mechanochemical is considered
    Then it stands as excluded

  @HZ-24
  Scenario: beside a defibrillator the laser goes before radiofrequency
    Given the demo case defibrillator
    When laser-1470-radial is considered
    Then it stands as preferred
    When rf-segmental-7cm is considered
    Then it stands as careful

  @HZ-12
  Scenario Outline: a symptomatic shunt bars foam and nothing else of the first choices (<technique>)
    Given the demo case symptomatic-shunt
    When <technique> is considered
    Then it stands as <standing>

    Examples:
      | technique         | standing  |
      | foam-polidocanol  | excluded  |
      | foam-sts          | excluded  |
      | laser-1470-radial | preferred |
