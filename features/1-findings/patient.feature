Feature: What in the patient or the leg weighs on every choice?

  Rule: FIN-017 a past deep clot makes the patient prone to clot

    @FIN-017
    Scenario Outline: <kind>: history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then FIN-017 <says>

      Examples:
        | kind    | history of conditions     | says        |
        | hit     | deep-vein-thrombosis-past | speaks      |
        | hit     | pulmonary-embolism-past   | speaks      |
        | miss    | none                      | stays quiet |
        | unknown | not recorded              | is in doubt |

  Rule: FIN-018 a clotting disorder or a cancer makes the patient prone to clot

    @FIN-018
    Scenario Outline: <kind>: history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then FIN-018 <says>

      Examples:
        | kind    | history of conditions | says        |
        | hit     | thrombophilia-severe  | speaks      |
        | hit     | active-cancer         | speaks      |
        | miss    | none                  | stays quiet |
        | unknown | not recorded          | is in doubt |

  Rule: FIN-019 the skin change is advanced

    @FIN-019
    Scenario Outline: <kind>: clinical class <clinical class>
      Given a sound leg
      And the case says the clinical class: <clinical class>
      When foam-polidocanol is considered
      Then FIN-019 <says>

      Examples:
        | kind    | clinical class | says        |
        | hit     | C4b            | speaks      |
        | hit     | C6             | speaks      |
        | hit     | C4c            | speaks      |
        | hit     | C6r            | speaks      |
        | miss    | C2             | stays quiet |
        | miss    | C4a            | stays quiet |
        | unknown | not recorded   | is in doubt |
