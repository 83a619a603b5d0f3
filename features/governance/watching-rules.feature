# Cases, cards and people are invented.
@governance
Feature: What do those who govern the rules see of them in use?

  Scenario: a rule that suddenly speaks more often is told with its numbers
    Given 30 cases of which the rule EXC-007 spoke in 1, 60 days ago
    And 30 cases of which the rule EXC-007 spoke in 20, 10 days ago
    When the safety officer looks at the last 30 days and the 90 before
    Then EXC-007 is told to speak more often
    And no other rule is told of
    And the audit trail tells that somebody looked

  Scenario: a few cases prove nothing
    Given 5 cases of which the rule EXC-007 spoke in 0, 60 days ago
    And 5 cases of which the rule EXC-007 spoke in 5, 10 days ago
    When the safety officer looks at the last 30 days and the 90 before
    Then no rule is told of

  Scenario: what was set aside is counted with its reason, and somebody looks later
    Given a card about laser-1470-radial that rested on EXC-007 was set aside, because "patient-refuses"
    And a card about laser-1470-radial that rested on EXC-007 was accepted
    When stefan finds it appropriate that the card was set aside, because "the patient said so before"
    And the safety officer looks at the last 30 days and the 90 before
    Then of 2 cards that rested on EXC-007 1 was set aside
    And of 1 of them that somebody looked at 1 was set aside rightly
    And the reason most often given is "patient-refuses"
    And the audit trail tells that stefan found something

  Scenario: a finding has a name, a post and a reason
    Given a card about laser-1470-radial that rested on EXC-007 was set aside, because "patient-refuses"
    When alma finds it appropriate that the card was set aside, because "it seems so"
    Then that finding is refused: "is nobody here who judges"
    When stefan finds it appropriate that the card was set aside, because ""
    Then that finding is refused: "must be given"

  Scenario: numbers that nobody checked are named with the rules they feed
    When the safety officer looks at the last 30 days and the 90 before
    Then heat.skin-gap.min is listed as unchecked, feeding EXC-007
