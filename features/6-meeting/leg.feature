Feature: Is the leg one that colleagues should look at together?

  Rule: MEE-007 the vein was treated before

    @MEE-007
    Scenario Outline: <kind>: earlier treatment <treatment>
      Given a sound leg
      And the case says the earlier treatment: <treatment>
      When the signs of a hard case are looked for
      Then MEE-007 <says>
      And MEE-007 would bring to the meeting

      Examples:
        | kind    | treatment          | says        |
        | hit     | surgery            | speaks      |
        | hit     | heat               | speaks      |
        | hit     | foam               | speaks      |
        | hit     | mechanochemical    | speaks      |
        | hit     | adhesive           | speaks      |
        | hit     | focused-ultrasound | speaks      |
        | miss    | none               | stays quiet |
        | unknown | not recorded       | is in doubt |

  Rule: MEE-008 channels came back after surgery

    @MEE-008
    Scenario Outline: <kind>: vein <vein>, earlier treatment <treatment>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the earlier treatment: <treatment>
      When the signs of a hard case are looked for
      Then MEE-008 <says>
      And MEE-008 would bring to the meeting

      Examples:
        | kind    | vein              | treatment    | says        |
        | hit     | recurrent-channel | none         | speaks      |
        | miss    | recurrent-channel | surgery      | stays quiet |
        | miss    | tributary         | none         | stays quiet |
        | unknown | recurrent-channel | not recorded | is in doubt |

  Rule: MEE-009 heat leads although a nerve lies close

    @MEE-009
    Scenario Outline: <kind>: <family> leads, gap <gap>
      Given a sound leg
      And the case says the gap to the nerve: <gap>
      And the ranking says the family of the option ranked first: <family>
      When the signs of a hard case are looked for
      Then MEE-009 <says>
      And MEE-009 would bring to the meeting

      Examples:
        | kind    | family             | gap          | says        |
        | hit     | heat               | 2 mm         | speaks      |
        | limit   | heat               | 4.9 mm       | speaks      |
        | limit   | heat               | 5 mm         | stays quiet |
        | miss    | heat               | 20 mm        | stays quiet |
        | miss    | adhesive           | 2 mm         | stays quiet |
        | miss    | foam               | 2 mm         | stays quiet |
        | miss    | mechanochemical    | 2 mm         | stays quiet |
        | miss    | focused-ultrasound | 2 mm         | stays quiet |
        | miss    | none               | 2 mm         | stays quiet |
        | unknown | heat               | not recorded | is in doubt |
        | unknown | not known          | 2 mm         | is in doubt |

  Rule: MEE-010 the deep veins are ill

    @MEE-010
    Scenario Outline: <kind>: deep veins <state>
      Given a sound leg
      And the case says the state of the deep veins: <state>
      When the signs of a hard case are looked for
      Then MEE-010 <says>
      And MEE-010 would bring to the meeting

      Examples:
        | kind    | state            | says        |
        | hit     | refluxing        | speaks      |
        | hit     | obstructed       | speaks      |
        | hit     | acute-thrombosis | speaks      |
        | miss    | normal           | stays quiet |
        | unknown | not recorded     | is in doubt |

  Rule: MEE-011 the trunk is the main way out of the leg

    @MEE-011
    Scenario Outline: <kind>: main way out <outflow>, history of conditions <history>
      Given a sound leg
      And the case says the history of conditions: <history>
      And the case says whether the trunk is the main way out of the leg: <outflow>
      When the signs of a hard case are looked for
      Then MEE-011 <says>
      And MEE-011 would bring to the meeting

      Examples:
        | kind    | outflow      | history               | says        |
        | hit     | yes          | trunk-is-main-outflow | speaks      |
        | hit     | not recorded | trunk-is-main-outflow | speaks      |
        | miss    | no           | trunk-is-main-outflow | stays quiet |
        | miss    | not recorded | none                  | stays quiet |
        | unknown | not recorded | not recorded          | is in doubt |
