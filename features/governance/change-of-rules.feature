# The people are invented: Anna writes rules; everything they say of patients is invented, too.
@governance
Feature: How does a change of the rules begin, and when may it be handed in?

  Scenario: a number is moved, and everybody reads what it was and what it is
    Given anna begins a change of the rules in force
    When she moves the gap to the skin from 5 mm to 6 mm, because "a burn between five and six millimetres"
    Then the change says "value: was 5 mm, is 6 mm"
    And nothing bars the change
    And the check of "unverified" warns of "heat.skin-gap.min"
    When she hands the change in
    Then the change is in review
    And the audit trail tells that the change was handed in
    And whoever reads it later reads the very document that was checked

  Scenario: a change without a reason is not handed in
    Given anna begins a change of the rules in force
    When she moves the gap to the skin from 5 mm to 6 mm and says no reason
    Then the check of "record" bars it: "gives no reason yet"
    When she hands the change in
    Then the change is refused: "gives no reason yet"
    And the audit trail tells of nothing

  Scenario: a rule that no scenario shows is not handed in
    Given anna begins a change of the rules in force
    When she writes a rule EXC-901 that no scenario shows
    Then the check of "scenarios" bars it: "EXC-901 has no scenario of kind hit"

  Scenario: what was signed before is not rewritten
    Given anna begins a change of the rules in force
    When she edits the earlier record 0003
    Then the check of "earlier-records" bars it: "was edited"

  Scenario: a rule is retired, its record stays, and its id is never used again
    Given anna begins a change of the rules in force
    When she retires the rule CAU-052
    Then nothing bars the change
    And the check of "retired" warns of "CAU-052 controlled"
    When she gives the id CAU-052 to another rule
    Then the check of "loading" bars it: "an id is never used again"

  Scenario: a change is taken back and handed in again
    Given anna begins a change of the rules in force
    And she moves the gap to the skin from 5 mm to 6 mm, because "a burn between five and six millimetres"
    And she hands the change in
    When she takes the change back, because "a better source was found"
    Then the change is withdrawn
    When she hands the change in
    Then the change is in review

  Scenario: who does not write rules hands nothing in
    Given anna begins a change of the rules in force
    And she moves the gap to the skin from 5 mm to 6 mm, because "a burn between five and six millimetres"
    And anna is a specialist and writes no rules
    When she hands the change in
    Then the change is refused: "is nobody here who writes rules"
