Feature: Is the trunk the way out for the blood of the leg?

  Rule: EXC-004 the trunk drains a leg whose deep veins are blocked

    @EXC-004
    Scenario Outline: <kind>: vein <vein>, state of the deep veins <state of the deep veins>, main way out <whether the trunk is the main way out of the leg>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the state of the deep veins: <state of the deep veins>
      And the case says the history of conditions: <history of conditions>
      And the case says whether the trunk is the main way out of the leg: <whether the trunk is the main way out of the leg>
      When laser-1470-radial is considered
      Then EXC-004 <says>

      Examples:
        | kind    | vein            | state of the deep veins | whether the trunk is the main way out of the leg | history of conditions | says        |
        | hit     | great-saphenous | obstructed              | not recorded                                     | trunk-is-main-outflow | speaks      |
        | hit     | great-saphenous | obstructed              | yes                                              | trunk-is-main-outflow | speaks      |
        | hit     | great-saphenous | obstructed              | yes                                              | not recorded          | speaks      |
        | miss    | great-saphenous | obstructed              | no                                               | trunk-is-main-outflow | stays quiet |
        | miss    | great-saphenous | normal                  | yes                                              | trunk-is-main-outflow | stays quiet |
        | miss    | great-saphenous | obstructed              | not recorded                                     | none                  | stays quiet |
        | miss    | tributary       | obstructed              | yes                                              | trunk-is-main-outflow | stays quiet |
        | unknown | great-saphenous | obstructed              | not recorded                                     | not recorded          | is in doubt |
        | unknown | great-saphenous | not recorded            | yes                                              | trunk-is-main-outflow | is in doubt |
