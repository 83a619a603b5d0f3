Feature: Can the deep veins take over?

  Rule: CAU-009 the deep veins reflux after an old clot

    @CAU-009
    Scenario Outline: <kind>: state of the deep veins <state of the deep veins>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the state of the deep veins: <state of the deep veins>
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then CAU-009 <says>

      Examples:
        | kind    | state of the deep veins | history of conditions     | says        |
        | hit     | refluxing               | deep-vein-thrombosis-past | speaks      |
        | miss    | refluxing               | none                      | stays quiet |
        | miss    | normal                  | deep-vein-thrombosis-past | stays quiet |
        | unknown | not recorded            | deep-vein-thrombosis-past | is in doubt |
        | unknown | refluxing               | not recorded              | is in doubt |

  Rule: CAU-010 the deep veins are obstructed

    @CAU-010
    Scenario Outline: <kind>: state of the deep veins <state of the deep veins>
      Given a sound leg
      And the case says the state of the deep veins: <state of the deep veins>
      When foam-polidocanol is considered
      Then CAU-010 <says>

      Examples:
        | kind    | state of the deep veins | says        |
        | hit     | obstructed              | speaks      |
        | miss    | normal                  | stays quiet |
        | miss    | refluxing               | stays quiet |
        | unknown | not recorded            | is in doubt |
