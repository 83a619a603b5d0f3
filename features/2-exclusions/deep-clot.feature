Feature: Is there a fresh clot in the deep veins?

  Rule: EXC-002 an acute deep thrombosis in this leg comes first

    @EXC-002
    Scenario Outline: <kind>: state of the deep veins <state of the deep veins>
      Given a sound leg
      And the case says the state of the deep veins: <state of the deep veins>
      When laser-1470-radial is considered
      Then EXC-002 <says>

      Examples:
        | kind    | state of the deep veins | says        |
        | hit     | acute-thrombosis        | speaks      |
        | miss    | normal                  | stays quiet |
        | miss    | refluxing               | stays quiet |
        | unknown | not recorded            | is in doubt |

  Rule: EXC-003 an acute deep clot or pulmonary embolism comes first

    @EXC-003
    Scenario Outline: <kind>: history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When adhesive is considered
      Then EXC-003 <says>

      Examples:
        | kind    | history of conditions      | says        |
        | hit     | deep-vein-thrombosis-acute | speaks      |
        | hit     | pulmonary-embolism-acute   | speaks      |
        | miss    | deep-vein-thrombosis-past  | stays quiet |
        | unknown | not recorded               | is in doubt |
