Feature: Do the arteries feed the leg well enough?

  Rule: CAU-011 the arteries of the leg are badly narrowed

    @CAU-011
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      When laser-1470-radial is considered
      Then CAU-011 <says>
      And CAU-011 would caution strongly

      Examples:
        | kind    | ankle-brachial index | says        |
        | hit     | 0.59                 | speaks      |
        | limit   | 0.6                  | stays quiet |
        | miss    | 1.0                  | stays quiet |
        | unknown | not recorded         | is in doubt |

  Rule: CAU-012 the arteries of the leg are narrowed

    @CAU-012
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      When laser-1470-radial is considered
      Then CAU-012 <says>
      And CAU-012 would caution moderately

      Examples:
        | kind    | ankle-brachial index | says        |
        | hit     | 0.7                  | speaks      |
        | limit   | 0.6                  | speaks      |
        | limit   | 0.8                  | speaks      |
        | miss    | 0.59                 | stays quiet |
        | miss    | 0.81                 | stays quiet |
        | unknown | not recorded         | is in doubt |

  Rule: CAU-082 the pressure at the ankle of a leg with narrowed arteries is too low

    @CAU-082
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, ankle pressure <ankle pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the ankle pressure: <ankle pressure>
      When laser-1470-radial is considered
      Then CAU-082 <says>
      And CAU-082 would caution strongly

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

  Rule: CAU-083 the pressure at the toe of a leg with narrowed arteries is too low

    @CAU-083
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then CAU-083 <says>
      And CAU-083 would caution strongly

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

  Rule: CAU-084 stiff arteries feign a good index and the pressure at the toe is too low

    @CAU-084
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then CAU-084 <says>
      And CAU-084 would caution strongly

      Examples:
        | kind    | ankle-brachial index | toe pressure | says        |
        | hit     | 1.31                 | 29 mm[Hg]    | speaks      |
        | limit   | 1.3                  | 29 mm[Hg]    | stays quiet |
        | limit   | 1.5                  | 30 mm[Hg]    | stays quiet |
        | miss    | 1.5                  | 80 mm[Hg]    | stays quiet |
        | miss    | 1.0                  | not recorded | stays quiet |
        | unknown | 1.5                  | not recorded | is in doubt |
        | unknown | not recorded         | 29 mm[Hg]    | is in doubt |

  Rule: CAU-085 diabetes feigns a good index and the pressure at the toe is too low

    @CAU-085
    Scenario Outline: <kind>: history of conditions <history of conditions>, toe pressure <toe pressure>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      And the case says the toe pressure: <toe pressure>
      When laser-1470-radial is considered
      Then CAU-085 <says>
      And CAU-085 would caution strongly

      Examples:
        | kind    | history of conditions      | toe pressure | says        |
        | hit     | diabetic-neuropathy-severe | 29 mm[Hg]    | speaks      |
        | hit     | diabetic-microangiopathy   | 29 mm[Hg]    | speaks      |
        | limit   | diabetic-microangiopathy   | 30 mm[Hg]    | stays quiet |
        | miss    | none                       | 29 mm[Hg]    | stays quiet |
        | miss    | diabetic-microangiopathy   | 80 mm[Hg]    | stays quiet |
        | unknown | diabetic-microangiopathy   | not recorded | is in doubt |
        | unknown | not recorded               | 29 mm[Hg]    | is in doubt |
