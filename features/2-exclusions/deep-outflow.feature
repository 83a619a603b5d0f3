Feature: Is the trunk the way out for the blood of the leg?

  Rule: EXC-004 the trunk drains a leg whose deep veins are blocked

    @EXC-004
    Scenario Outline: <kind>: vein <vein>, state of the deep veins <state of the deep veins>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the state of the deep veins: <state of the deep veins>
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then EXC-004 <says>

      Examples:
        | kind    | vein            | state of the deep veins | history of conditions | says        |
        | hit     | great-saphenous | obstructed              | trunk-is-main-outflow | speaks      |
        | miss    | great-saphenous | normal                  | trunk-is-main-outflow | stays quiet |
        | miss    | great-saphenous | obstructed              | none                  | stays quiet |
        | miss    | tributary       | obstructed              | trunk-is-main-outflow | stays quiet |
        | unknown | great-saphenous | obstructed              | not recorded          | is in doubt |
        | unknown | great-saphenous | not recorded            | trunk-is-main-outflow | is in doubt |
