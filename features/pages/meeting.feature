# People, cases and the clinic are invented. A real server over a PostgreSQL database is asked over HTTP.
@pages
Feature: How does a hard case go through the meeting?

  Background:
    Given robin, a member of the meeting, is at the pages

  Rule: a case waits for the reasons that make it hard

    Scenario: what the rules call hard is found without anybody sending it
      Given the demo case recurrent-groin-channels as "talk-01"
      When the queue has looked at every case
      Then "talk-01" is found hard because of "MEE-"

    Scenario: what is rare among past cases says so, with the number it rests on
      Given the demo case large-trunk-anticoagulated as "talk-02"
      And 60 past cases are released
      When the queue has looked at every case
      Then "talk-02" is found hard because of "rare: of the past cases that can be compared, at most 4"
      And "talk-02" is found hard because of "meeting.rare.max 4 (local)"

    Scenario: a past case the rules cannot read is named, and the others are found without it
      Given the demo case straight-thigh-trunk as "talk-04"
      And 60 past cases are released
      And a past case "unreadable-1" is released that no rules can read
      When the page "/cases/talk-04/similar/L1" is opened
      Then the page says "LEFT OUT, for the rules in force cannot read it: unreadable-1."
      And the page says "The most alike first"

  Rule: the packet shows the case without the person

    Scenario: a name in the question stays with the sender
      Given the demo case straight-thigh-trunk as "quillfeather-7"
      When "quillfeather-7" is sent with the question "Mrs Quillfeather asks: which way first? Wall 0.4 mm"
      Then the packet does not say "uillfeather"
      And the packet says "0.4 mm"
      And the packet says "licensed specialist decides"
      And the packet as PDF says the same

  Rule: a decision keeps who disagreed, and goes back to the case and to those who watch the rules

    Scenario: leave it alone, against one voice
      Given the demo case straight-thigh-trunk as "talk-03"
      And "talk-03" is sent to the meeting of "2026-12-01"
      When the agenda of "2026-12-01" is opened
      Then the page says "Not decided."
      When the decision on "talk-03" is entered:
        | Date of the meeting, such as 2026-12-01                  | 2026-12-01           |
        | What is decided for L1                                   | leave alone          |
        | Who agreed: user names or initials, parted by commas     | AK, LB               |
        | Who (1)                                                  | MN                   |
        | What was said (1)                                        | would close it       |
        | Who sees to it: one user name or initials                | AK                   |
      Then it is refused
      And the page says "why it is not the first"
      When "Why it is not the first in rank (L1)" is set to "wish of the patient"
      And "Reason in words (L1)" is set to "too little to gain"
      And "Keep the decision" is pressed
      Then it is done
      When the page "/cases/talk-03/meeting" is opened
      Then the page says "DISSENT of MN: would close it"
      And those who watch the rules are told: overridden, because "wish-of-the-patient"
      And nobody is told the words "too little to gain"
