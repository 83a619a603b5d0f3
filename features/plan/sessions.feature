Feature: What do the segments of a leg share, and in which order are they treated?

  Scenario: two legs fit one session, trunks before branches, foam after catheters, prone last
    Given the demo case both-legs-many-segments
    Then the plan takes 1 session
    And the work goes L1,L2,L3,R1,R3,R2
    And L1 gets rf-segmental-7cm
    And L3 gets foam-polidocanol
    And R2 is done prone

  Scenario: the foam of one session is not enough for every vein that would have it
    Given the demo case both-legs-many-segments
    Then foam binds
    And R2 gets adhesive

  Scenario: one sound trunk gets what ranks first, and no limit is felt
    Given a sound leg
    Then the plan takes 1 session
    And no limit is felt

  Scenario: what a person has chosen is kept
    Given a sound leg
    And the case says the technique already chosen: adhesive
    Then L1 gets adhesive

  Scenario: a choice that the rules bar is not planned but referred
    Given a sound leg
    And the case says the allergies: cyanoacrylate
    And the case says the technique already chosen: adhesive
    Then L1 is left as refer

  Scenario: pregnancy defers every elective closure
    Given the demo case pregnancy
    Then the plan takes 0 sessions
    And L1 is left as refer

  Scenario: a room that is free for too short a time leaves the segment for later
    Given a sound leg
    And the case says the time the room is free: 20 min
    Then the plan takes 0 sessions
    And L1 is left as later
    And time binds
