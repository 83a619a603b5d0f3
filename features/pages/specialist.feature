# People, cases and the clinic are invented. A real server over a PostgreSQL database is asked over HTTP, as a browser that
# runs no script asks it; fields and buttons are found by the words beside them.
@pages
Feature: How does the specialist come from a scan to a treated vein?

  Background:
    Given wren, a specialist, is at the pages

  Rule: what was not measured stays unknown, and nothing that was typed is lost

    Scenario: a slip of the pen comes back at its field with everything else
      When a new case is filled in:
        | Name of the case here; no name of a person              | steps-01        |
        | Age                                                     | 540             |
        | Side                                                    | left            |
        | Name of the segment in the map                          | L1              |
        | Vein                                                    | great saphenous |
        | Level                                                   | thigh           |
        | Inner diameter of the vein, in the posture recorded     | 6.4             |
      And "Save and advise" is pressed
      Then it is refused
      And the page says "must be 0 to 120 years, is 540"
      And "Inner diameter of the vein, in the posture recorded" still holds "6.4"
      And no case "steps-01" is kept

    Scenario: without a wall no technique that needs it is ranked
      Given the demo case straight-thigh-trunk as "steps-02", its wall not recorded
      When the page "/cases/steps-02" is opened
      Then the page says "Measure first, then ask again:"
      And the page says "wall relaxed not known"

  Rule: the order is explained, and who departs from it says why

    Scenario: the second option is chosen
      Given the demo case straight-thigh-trunk as "steps-03"
      And those who watch the rules have looked
      When the page "/cases/steps-03" is opened
      Then the page says "DRAFT rules"
      And the page says "Every reason, with rule and source"
      When the option in place 2 is picked
      And "Keep this choice" is pressed
      Then it is refused
      When the page "/cases/steps-03" is opened
      And the option in place 2 is picked
      And "Reason, where it is not the first option" is set to "the patient does not want it"
      And "Keep this choice" is pressed
      Then it is done
      And the page says "Chosen: "
      And those who watch the rules count 1 answer more, 1 of them set aside

    Scenario: a change of mind counts once
      Given the demo case straight-thigh-trunk as "steps-04"
      And those who watch the rules have looked
      When the page "/cases/steps-04" is opened
      And the option in place 1 is picked
      And "Keep this choice" is pressed
      And the option in place 2 is picked
      And "Reason, where it is not the first option" is set to "the patient does not want it"
      And "Keep this choice" is pressed
      Then it is done
      And those who watch the rules count 1 answer more, 1 of them set aside

  Rule: what is moved in the energy window is computed anew

    Scenario: more power, same pullback
      Given the demo case straight-thigh-trunk as "steps-05"
      When the page "/cases/steps-05/window/L1/rf-bipolar-pullback?powerW=11&pullbackSPerCm=7.5" is opened
      Then the page says "11 W, pullback 7.5 s/cm, which makes 83 J/cm"
      When "more power" is pressed
      Then the page says "11.5 W, pullback 7.5 s/cm, which makes 86 J/cm"

  Rule: what was done is recorded against the plan, and how it went against what was done

    Scenario: from the plan to the first visit
      Given the demo case straight-thigh-trunk as "steps-06"
      When the page "/cases/steps-06/plan" is opened
      Then the page says "It is NOT KEPT"
      When "Keep this plan" is pressed
      Then the page says "This is plan 1, kept by wren"
      When the page "/cases/steps-06/plan/1/sessions/1/delivered" is opened
      And "Keep the record and write the note" is pressed
      Then it is refused
      And the page says "its values are not confirmed"
      When "I have looked through every value of this segment" is ticked
      And "Keep the record and write the note" is pressed
      Then it is done
      And the note as PDF says "not recorded"
      And the sheet for the patient is a PDF that recommends nothing
      When the page "/cases/steps-06/follow-up" is opened
      And "Days since the procedure; the day itself is 0" is set to "7"
      And "Counts as closed by the definition" is set to "heat open part: longest open part with which a vein closed by heat still counts as closed, 5 cm"
      And "Length of the treated vein found open" is set to "0"
      And "Keep the visit" is pressed
      Then it is done
      And the page says "Day 7: closed"
      And the page says "reflux not recorded"

  Rule: a finished case goes on without its person

    Scenario: offered at its papers, and held back until others are like it
      Given the demo case straight-thigh-trunk as "quillfeather-9"
      When the page "/cases/quillfeather-9/past" is opened
      Then the page says "Not finished"
      When the page "/cases/quillfeather-9/plan" is opened
      And "Keep this plan" is pressed
      And the page "/cases/quillfeather-9/plan/1/sessions/1/delivered" is opened
      And "I have looked through every value of this segment" is ticked
      And "Keep the record and write the note" is pressed
      And the page "/cases/quillfeather-9/follow-up" is opened
      And "Days since the procedure; the day itself is 0" is set to "42"
      And "Counts as closed by the definition" is set to "heat open part: longest open part with which a vein closed by heat still counts as closed, 5 cm"
      And "Length of the treated vein found open" is set to "0"
      And "Keep the visit" is pressed
      Then the page says "Offer it as a past case"
      When the page "/cases/quillfeather-9/past" is opened
      And "Pseudonym of the clinic, such as site-a1; no name" is set to "Larkspur"
      And "What else was learned, if anything" is set to "Mrs Quillfeather slept well"
      And "Take the person out and let it wait" is pressed
      Then it is refused
      And the page says "site"
      When "Pseudonym of the clinic, such as site-a1; no name" is set to "site-q1"
      And "Take the person out and let it wait" is pressed
      Then it is done
      And the page says "it waits for 4 more with age"
      And the page says "slept well"
      And the page does not say "uillfeather"
      When "Release those marked as read" is pressed
      Then it is refused
      And the page says "none was marked as read"

  Rule: the room is typed once

    Scenario: the next case starts with the room of the last one
      Given the demo case straight-thigh-trunk as "steps-07", saved by wren
      When the page "/cases/new" is opened
      And "Take over the room of my last case" is pressed
      Then the page says "The room was taken over from case steps-07; nothing is saved yet."
      And the room holds what "steps-07" holds
