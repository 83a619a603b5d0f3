# People and the clinic are invented: anna writes rules, rosa reviews, clara is clinical lead, stefan safety officer. A real
# server over a PostgreSQL database is asked over HTTP. What becomes of a release stands in features/governance.
@pages
Feature: What does the team that governs the rules find at these pages?

  Scenario: the way in leads to the rules
    Given stefan, the safety officer, is at the pages
    When the page "/governance" is opened
    Then the page is called "Rules"
    And the page says "EXC-007 heat needs a gap to the skin"

  Scenario: a rule tells where it comes from and where it is tried
    Given stefan, the safety officer, is at the pages
    When the page "/governance/rules/EXC-007" is opened
    Then the page says "the depth to the skin is less than limit heat.skin-gap.min"
    And the page says "S-"
    And every boundary of the rule is as its words say

  Scenario: numbers nobody checked are listed with the rules they feed
    Given clara, the clinical lead, is at the pages
    When the page "/governance/due" is opened
    Then the page says "Numbers in use that nobody checked"
    And "heat.skin-gap.min" is listed as feeding "EXC-007"

  Scenario: what was set aside at the bedside is judged by somebody who may
    Given wren, a specialist, set the first option of "govern-01" aside
    And stefan, the safety officer, is at the pages
    When the page "/governance/feedback" is opened
    And the answer about "govern-01" is found right, because "the patient said so before"
    Then it is done
    And the page says "the patient said so before"

  Scenario: who writes rules judges nothing
    Given wren, a specialist, set the first option of "govern-02" aside
    And anna, who writes rules, is at the pages
    When the page "/governance/feedback" is opened
    Then there is no button "Keep what I find"

  Scenario: a change is begun, edited and checked at the pages
    Given anna, who writes rules, is at the pages
    When the page "/governance/changes" is opened
    And "What it is about" is set to "A wider gap to the skin"
    And "Your initials" is set to "AK"
    And "Start" is pressed
    Then it is done
    When the number "heat.skin-gap.min" is opened and set to "six"
    Then it is refused
    And the page says "must be a number such as 5"
    When the number "heat.skin-gap.min" is opened and set to "6"
    Then it is done
    And the page says "knowledge/limits/distances.yaml"

  Rule: what becomes of a release is said before it is done

    Scenario: an approved release runs beside the one in force before anybody sees what it says
      Given release 1.0.0 is in force and release 1.1.0 is approved
      And clara, the clinical lead, is at the pages
      When the page "/governance/releases/1.1.0" is opened
      And the way "Let it run as a shadow" is taken
      Then the page says "Release 1.1.0 is asked silently beside each advice"
      When "Let it run as a shadow" is pressed
      Then it is done
      And the page says "runs as a shadow"
      When the way "End the shadow" is taken
      And "End the shadow" is pressed
      Then it is done
      And the page does not say "runs as a shadow"

    Scenario: it is planned for a moment, and a moment that is none is refused
      Given release 1.0.0 is in force and release 1.1.0 is approved
      And clara, the clinical lead, is at the pages
      When the page "/governance/releases/1.1.0" is opened
      And the way "Plan for later" is taken
      And "From when, UTC" is set to "tomorrow"
      And "Plan for later" is pressed
      Then it is refused
      And the page says "must be a day and a time, UTC"
      When "From when, UTC" is set to "2026-03-05T06:00"
      And "Plan for later" is pressed
      Then it is done
      And the page says "comes into force at 2026-03-05T06:00:00Z"

    Scenario: what nobody may go back to is retired with a reason
      Given release 1.0.0 is in force and release 1.1.0 is approved
      And release 1.2.0 took its place
      And clara, the clinical lead, is at the pages
      When the page "/governance/releases/1.0.0" is opened
      And the way "Retire" is taken
      Then the page says "Release 1.0.0 can never be gone back to."
      When "Because" is set to "its gap to the skin was too small"
      And "Retire" is pressed
      Then it is done
      And the page says "Release 1.0.0: retired, superseded by 1.2.0."
      When the page "/governance/releases/1.2.0/acts/rollback" is opened
      Then the page says "There is no release before it to go back to"
      And there is no button "Leave it as it is"

    Scenario: the safety officer puts nothing in force
      Given release 1.0.0 is in force and release 1.1.0 is approved
      And stefan, the safety officer, is at the pages
      When the page "/governance/releases/1.1.0" is opened
      Then there is no button "Put in force now"

  Scenario: what came of past cases is told with its limits, and no small group is
    Given clara, the clinical lead, is at the pages
    And 60 past cases are released
    When the page "/results" is opened
    Then the page says "At a glance, at one year"
    And the page says "made-up cases are counted here"
    And the page says "fewer than 5 past cases"
    When the page "/results?technique=foam-polidocanol" is opened
    Then the page says "Stayed closed up to that day, by Kaplan and Meier"
    And the page says "Against published rates, case by case"
