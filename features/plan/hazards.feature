# One scenario for each hazard that a whole piece of advice, not a single rule, must be seen to hold.
Feature: What could go wrong is held by the advice as a whole

  @HZ-01
  Scenario: heat among the motor nerves behind the knee is at best for the careful
    Given a sound leg
    And the case says the vein: tributary
    And the case says the level: popliteal
    When laser-1470-radial is considered
    Then it stands as careful

  @HZ-03
  Scenario: a vein under the skin is not heated
    Given a sound leg
    And the case says the depth to the skin: 4.9 mm
    When laser-1470-radial is considered
    Then it stands as excluded
    When focused-ultrasound is considered
    Then it stands as excluded

  @HZ-07
  Scenario: an acute deep clot stops everything
    Given a sound leg
    And the case says the state of the deep veins: acute-thrombosis
    When laser-1470-radial is considered
    Then it stands as excluded
    And nothing is ranked

  @HZ-09
  Scenario: a light patient with a long vein is not given more lidocaine than the stop
    Given a sound leg
    And the case says the weight: 30 kg
    And the case says the length: 90 cm
    When laser-1470-radial is considered
    Then it stands as excluded

  @HZ-11
  Scenario: an allergy bars the drug and leaves the others
    Given a sound leg
    And the case says the allergies: polidocanol, cyanoacrylate
    When foam-polidocanol is considered
    Then it stands as excluded
    When adhesive is considered
    Then it stands as excluded
    When laser-1470-radial is considered
    Then it stands as preferred

  @HZ-13
  Scenario: the main way out of a blocked leg is not closed
    Given a sound leg
    And the case says the state of the deep veins: obstructed
    And the case says the history of conditions: trunk-is-main-outflow
    When laser-1470-radial is considered
    Then it stands as excluded
    And nothing is ranked

  @HZ-13
  Scenario: the main way out of one leg leaves the other leg free
    Given a sound leg
    And the case says the state of the deep veins: obstructed
    And the case says the history of conditions: trunk-is-main-outflow
    And the case says whether the trunk is the main way out of the leg: no
    When laser-1470-radial is considered
    Then it stands as careful

  @HZ-09
  Scenario: plain lidocaine is not given up to the stop of the mix with adrenaline
    Given a sound leg
    And the case says whether the tumescent mix holds adrenaline: no
    And the case says the weight: 40 kg
    And the case says the length: 70 cm
    When laser-1470-radial is considered
    Then it stands as excluded

  @HZ-15
  Scenario: stiff arteries ask for the pressure at the toe
    Given a sound leg
    And the case says the ankle-brachial index: 1.5
    When laser-1470-radial is considered
    Then it stands as careful
    And the case says the toe pressure: 80 mm[Hg]
    When laser-1470-radial is considered
    Then it stands as preferred

  @HZ-15
  Scenario: badly narrowed arteries make every closure one for the careful
    Given a sound leg
    And the case says the ankle-brachial index: 0.5
    When laser-1470-radial is considered
    Then it stands as careful
    When foam-polidocanol is considered
    Then it stands as careful

  @HZ-25
  Scenario: infected skin waits
    Given a sound leg
    And the case says the history of conditions: skin-infection-local
    When laser-1470-radial is considered
    Then it stands as excluded
    And nothing is ranked

  @HZ-27
  Scenario: a trunk without reflux is left alone
    Given a sound leg
    And the case says the reflux time: 0.3 s
    When laser-1470-radial is considered
    Then it stands as excluded
    And nothing is ranked

  @HZ-28
  Scenario: a recent heart attack bars sclerosants and warns of the rest
    Given a sound leg
    And the case says the history of conditions: myocardial-infarction-recent
    When foam-sts is considered
    Then it stands as excluded
    When mechanochemical is considered
    Then it stands as excluded
    When laser-1470-radial is considered
    Then it stands as careful
