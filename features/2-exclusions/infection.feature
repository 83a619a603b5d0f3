Feature: Is there an infection that must clear first?

  Rule: EXC-005 the skin where the work is done is infected

    @EXC-005
    Scenario Outline: <kind>: history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When focused-ultrasound is considered
      Then EXC-005 <says>

      Examples:
        | kind    | history of conditions | says        |
        | hit     | skin-infection-local  | speaks      |
        | miss    | none                  | stays quiet |
        | unknown | not recorded          | is in doubt |

  Rule: EXC-006 the whole body is fighting an infection

    @EXC-006
    Scenario Outline: <kind>: history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then EXC-006 <says>

      Examples:
        | kind    | history of conditions | says        |
        | hit     | sepsis                | speaks      |
        | miss    | none                  | stays quiet |
        | unknown | not recorded          | is in doubt |
