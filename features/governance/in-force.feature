# The people are invented: Alma writes rules, Rosa reviews, Clara is clinical lead, Stefan is safety officer.
@governance
Feature: Which rules speak, and since when?

  Scenario: without a release the program's own rules speak, as a draft
    Then the rules that run are a draft

  Scenario: what is approved does not speak until it is put in force
    Given everybody has signed release 1.0.0
    Then the rules that run are a draft
    When release 1.0.0 is put in force
    Then release 1.0.0 runs

  Scenario: a draft, however good, is not put in force
    Given release 1.0.0 by alma is built
    When release 1.0.0 is put in force
    Then that is refused: "is draft and must be approved before it can be active"

  Scenario: a half-signed release is not put in force
    Given release 1.0.0 by alma is in review
    And rosa acknowledges the replay
    And clara signs as clinical lead
    When release 1.0.0 is put in force
    Then that is refused: "is in review and must be approved before it can be active"

  Scenario: a release comes into force at the hour that was planned
    Given release 1.0.0 is in force
    And everybody has signed release 1.1.0
    And release 1.1.0 is planned for 2026-03-02T06:00:00Z
    Then at 2026-03-02T05:59:59Z release 1.0.0 runs
    And at 2026-03-02T06:00:00Z release 1.1.0 runs

  Scenario: what was planned is taken back in time
    Given release 1.0.0 is in force
    And everybody has signed release 1.1.0
    And release 1.1.0 is planned for 2026-03-02T06:00:00Z
    When release 1.1.0 is withdrawn because "the guideline was corrected"
    Then at 2026-03-02T06:00:00Z release 1.0.0 runs

  Scenario: the new release is rolled back and never comes again
    Given release 1.0.0 is in force
    And release 1.1.0 is in force
    When the release in force is rolled back because "it warned too often"
    Then release 1.0.0 runs
    And release 1.1.0 is retired
    When release 1.1.0 is put in force
    Then that is refused: "is retired and stays so; make a new version"

  Scenario: there is nothing to go back to
    Given release 1.0.0 is in force
    When the release in force is rolled back because "doubts"
    Then that is refused: "there is no release before 1.0.0 to go back to"

  Scenario: nobody goes back by putting an older number in force
    Given everybody has signed release 1.0.0
    And release 1.1.0 is in force
    When release 1.0.0 is put in force
    Then that is refused: "is not above 1.1.0, which is in force; to go back, roll back"

  Scenario: a release that has run out stops rather than speak on
    Given a release 1.0.0 made to be in force until 2026-06-30 is in force
    Then at 2026-06-30T23:59:59Z release 1.0.0 runs
    And at 2026-07-01T00:00:00Z nothing runs: "has run out; activate another release"

  Scenario: an overdue review is told, and the rules speak on
    Given release 1.0.0 is in force
    Then at 2027-03-02T00:00:00Z release 1.0.0 runs
    And its user is told "its review is overdue"

  Scenario: what was advised on an earlier day is said again, to the byte
    Given release 1.0.0 is in force
    And an advice was given for the demo case straight-thigh-trunk
    And release 1.1.0 with a wider gap to the skin is in force
    Then the advice for that case is another now
    And as of release 1.0.0 it is the same to the byte

  Scenario: the next release runs silently beside
    Given release 1.0.0 is in force
    And release 1.1.0 with a wider gap to the skin is in review
    When release 1.1.0 runs as a shadow
    And an advice was given for the demo case straight-thigh-trunk
    Then it said that it is of release 1.0.0
    And 1 silent answer of release 1.1.0 is counted
