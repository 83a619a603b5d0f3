Feature: Can the deep veins take over?

  Rule: CAU-009 the deep veins reflux after an old clot

    @CAU-009
    Scenario Outline: <kind>: state of the deep veins <state of the deep veins>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the state of the deep veins: <state of the deep veins>
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then CAU-009 <says>
      And CAU-009 would caution moderately

      Examples:
        | kind    | state of the deep veins | history of conditions     | says        |
        | hit     | refluxing               | deep-vein-thrombosis-past | speaks      |
        | hit     | refluxing               | pulmonary-embolism-past   | speaks      |
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
      And CAU-010 would caution strongly

      Examples:
        | kind    | state of the deep veins | says        |
        | hit     | obstructed              | speaks      |
        | miss    | normal                  | stays quiet |
        | miss    | refluxing               | stays quiet |
        | unknown | not recorded            | is in doubt |

  Rule: CAU-067 the trunk is called the main way out though no block of the deep veins is recorded

    @CAU-067
    Scenario Outline: <kind>: vein <vein>, state of the deep veins <state of the deep veins>, main way out <whether the trunk is the main way out of the leg>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the state of the deep veins: <state of the deep veins>
      And the case says the history of conditions: <history of conditions>
      And the case says whether the trunk is the main way out of the leg: <whether the trunk is the main way out of the leg>
      When laser-1470-radial is considered
      Then CAU-067 <says>
      And CAU-067 would caution strongly

      Examples:
        | kind    | vein            | state of the deep veins | whether the trunk is the main way out of the leg | history of conditions | says        |
        | hit     | great-saphenous | normal                  | not recorded                                     | trunk-is-main-outflow | speaks      |
        | hit     | great-saphenous | refluxing               | yes                                              | trunk-is-main-outflow | speaks      |
        | miss    | great-saphenous | normal                  | no                                               | trunk-is-main-outflow | stays quiet |
        | miss    | great-saphenous | obstructed              | yes                                              | trunk-is-main-outflow | stays quiet |
        | miss    | great-saphenous | normal                  | not recorded                                     | none                  | stays quiet |
        | miss    | tributary       | normal                  | yes                                              | trunk-is-main-outflow | stays quiet |
        | unknown | great-saphenous | not recorded            | yes                                              | trunk-is-main-outflow | is in doubt |
        | unknown | great-saphenous | normal                  | not recorded                                     | not recorded          | is in doubt |
