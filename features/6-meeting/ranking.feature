Feature: Is the ranking one that colleagues should look at together?

  Rule: MEE-001 not even the family of techniques ranked first leads firmly

    @MEE-001
    Scenario Outline: <kind>: the lead of the family is <firmness>
      Given a sound leg
      And the ranking says how firm the lead of the family ranked first is: <firmness>
      When the signs of a hard case are looked for
      Then MEE-001 <says>
      And MEE-001 would bring to the meeting

      Examples:
        | kind    | firmness  | says         |
        | hit     | not-firm  | speaks       |
        | miss    | firm      | stays quiet  |
        | miss    | none      | stays quiet  |
        | unknown | not known | is in doubt  |

  Rule: MEE-002 no technique does better than careful

    @MEE-002
    Scenario Outline: <kind>: the best stands as <standing>
      Given a sound leg
      And the ranking says the best standing: <standing>
      When the signs of a hard case are looked for
      Then MEE-002 <says>
      And MEE-002 would bring to the meeting

      Examples:
        | kind    | standing      | says        |
        | hit     | careful       | speaks      |
        | miss    | suitable      | stays quiet |
        | miss    | preferred     | stays quiet |
        | miss    | measure-first | stays quiet |
        | miss    | not-in-room   | stays quiet |
        | miss    | excluded      | stays quiet |
        | unknown | not known     | is in doubt |

  Rule: MEE-003 every technique is excluded, and not for pregnancy

    @MEE-003
    Scenario Outline: <kind>: the best stands as <standing>, pregnancy <pregnancy>
      Given a sound leg
      And the case says the sex: female
      And the case says pregnancy: <pregnancy>
      And the ranking says the best standing: <standing>
      When the signs of a hard case are looked for
      Then MEE-003 <says>
      And MEE-003 would bring to the meeting

      Examples:
        | kind    | standing      | pregnancy    | says        |
        | hit     | excluded      | no           | speaks      |
        | miss    | excluded      | yes          | stays quiet |
        | miss    | careful       | no           | stays quiet |
        | miss    | suitable      | no           | stays quiet |
        | miss    | preferred     | no           | stays quiet |
        | miss    | measure-first | no           | stays quiet |
        | miss    | not-in-room   | no           | stays quiet |
        | unknown | excluded      | not recorded | is in doubt |
        | unknown | not known     | no           | is in doubt |

  Rule: MEE-004 nothing can be ranked before something is measured or brought in

    @MEE-004
    Scenario Outline: <kind>: the best stands as <standing>
      Given a sound leg
      And the ranking says the best standing: <standing>
      When the signs of a hard case are looked for
      Then MEE-004 <says>
      And MEE-004 would bring to the meeting

      Examples:
        | kind    | standing      | says        |
        | hit     | measure-first | speaks      |
        | hit     | not-in-room   | speaks      |
        | miss    | excluded      | stays quiet |
        | miss    | careful       | stays quiet |
        | miss    | suitable      | stays quiet |
        | miss    | preferred     | stays quiet |
        | unknown | not known     | is in doubt |

  Rule: MEE-005 one technique is left

    @MEE-005
    Scenario Outline: <kind>: <options> ranked, the best stands as <standing>
      Given a sound leg
      And the ranking says the number of ranked options: <options>
      And the ranking says the best standing: <standing>
      When the signs of a hard case are looked for
      Then MEE-005 <says>
      And MEE-005 would bring to the meeting

      Examples:
        | kind    | options   | standing      | says        |
        | hit     | 1         | preferred     | speaks      |
        | limit   | 1         | suitable      | speaks      |
        | limit   | 1.05      | suitable      | stays quiet |
        | miss    | 2         | suitable      | stays quiet |
        | miss    | 1         | careful       | stays quiet |
        | miss    | 0         | excluded      | stays quiet |
        | miss    | 0         | measure-first | stays quiet |
        | miss    | 0         | not-in-room   | stays quiet |
        | unknown | not known | suitable      | is in doubt |
        | unknown | 1         | not known     | is in doubt |

  Rule: MEE-006 the technique ranked first stands close to several limits

    @MEE-006
    Scenario Outline: <kind>: <calls> close calls
      Given a sound leg
      And the ranking says the number of close calls of the option ranked first: <calls>
      When the signs of a hard case are looked for
      Then MEE-006 <says>
      And MEE-006 would bring to the meeting

      Examples:
        | kind    | calls     | says        |
        | hit     | 3         | speaks      |
        | limit   | 2         | speaks      |
        | limit   | 1.95      | stays quiet |
        | miss    | 0         | stays quiet |
        | unknown | not known | is in doubt |
