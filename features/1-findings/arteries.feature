Feature: Is the pressure in the leg too low where the index alone would not tell?

  Rule: FIN-030 the index is reduced and the pressure at the ankle is too low

    @FIN-030
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, ankle pressure <ankle pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the ankle pressure: <ankle pressure>
      When laser-1470-radial is considered
      Then FIN-030 <says>

      Examples:
        | kind    | ankle-brachial index | ankle pressure | says        |
        | hit     | 0.7                  | 59 mm[Hg]      | speaks      |
        | hit     | 0.6                  | 59 mm[Hg]      | speaks      |
        | hit     | 0.8                  | 59 mm[Hg]      | speaks      |
        | limit   | 0.7                  | 60 mm[Hg]      | stays quiet |
        | miss    | 0.59                 | 59 mm[Hg]      | stays quiet |
        | miss    | 0.81                 | 59 mm[Hg]      | stays quiet |
        | miss    | 1.0                  | not recorded   | stays quiet |
        | unknown | 0.7                  | not recorded   | is in doubt |
        | unknown | not recorded         | 59 mm[Hg]      | is in doubt |

  Rule: FIN-031 the index is reduced and the pressure at the toe is too low

    @FIN-031
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then FIN-031 <says>

      Examples:
        | kind    | ankle-brachial index | toe pressure | says        |
        | hit     | 0.7                  | 29 mm[Hg]    | speaks      |
        | hit     | 0.6                  | 29 mm[Hg]    | speaks      |
        | hit     | 0.8                  | 29 mm[Hg]    | speaks      |
        | limit   | 0.7                  | 30 mm[Hg]    | stays quiet |
        | miss    | 0.59                 | 29 mm[Hg]    | stays quiet |
        | miss    | 0.81                 | 29 mm[Hg]    | stays quiet |
        | miss    | 1.0                  | not recorded | stays quiet |
        | unknown | 0.7                  | not recorded | is in doubt |
        | unknown | not recorded         | 29 mm[Hg]    | is in doubt |

  Rule: FIN-032 the index is as high as with stiff arteries and the pressure at the toe is too low

    @FIN-032
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then FIN-032 <says>

      Examples:
        | kind    | ankle-brachial index | toe pressure | says        |
        | hit     | 1.31                 | 29 mm[Hg]    | speaks      |
        | limit   | 1.3                  | 29 mm[Hg]    | stays quiet |
        | limit   | 1.5                  | 30 mm[Hg]    | stays quiet |
        | miss    | 1.5                  | 80 mm[Hg]    | stays quiet |
        | miss    | 1.0                  | not recorded | stays quiet |
        | unknown | 1.5                  | not recorded | is in doubt |
        | unknown | not recorded         | 29 mm[Hg]    | is in doubt |

  Rule: FIN-033 diabetes may feign a good index and the pressure at the toe is too low

    @FIN-033
    Scenario Outline: <kind>: history of conditions <history of conditions>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then FIN-033 <says>

      Examples:
        | kind    | history of conditions      | toe pressure | says        |
        | hit     | diabetic-neuropathy-severe | 29 mm[Hg]    | speaks      |
        | hit     | diabetic-microangiopathy   | 29 mm[Hg]    | speaks      |
        | limit   | diabetic-microangiopathy   | 30 mm[Hg]    | stays quiet |
        | miss    | none                       | 29 mm[Hg]    | stays quiet |
        | miss    | diabetic-microangiopathy   | 80 mm[Hg]    | stays quiet |
        | unknown | diabetic-microangiopathy   | not recorded | is in doubt |
        | unknown | not recorded               | 29 mm[Hg]    | is in doubt |
