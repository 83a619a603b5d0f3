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

  Rule: CAU-082 the pressure at the ankle or the toe is too low, whatever the index says

    @CAU-082
    Scenario Outline: <kind>: ankle-brachial index <ankle-brachial index>, ankle pressure <ankle pressure>, toe pressure <toe pressure>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the ankle-brachial index: <ankle-brachial index>
      And the case says the ankle pressure: <ankle pressure>
      And the case says the toe pressure: <toe pressure>
      And the case says the history of conditions: <history of conditions>
      When laser-1470-radial is considered
      Then CAU-082 <says>
      And CAU-082 would caution strongly

      Examples:
        | kind    | ankle-brachial index | ankle pressure | toe pressure | history of conditions    | says        |
        | hit     | 0.7                  | 59 mm[Hg]      | not recorded | none                     | speaks      |
        | hit     | 0.7                  | 80 mm[Hg]      | 29 mm[Hg]    | none                     | speaks      |
        | hit     | 1.5                  | not recorded   | 29 mm[Hg]    | none                     | speaks      |
        | hit     | 1.0                  | not recorded   | 29 mm[Hg]    | diabetic-microangiopathy | speaks      |
        | miss    | 0.7                  | 60 mm[Hg]      | 30 mm[Hg]    | none                     | stays quiet |
        | miss    | 1.0                  | not recorded   | not recorded | none                     | stays quiet |
        | unknown | 0.7                  | not recorded   | 80 mm[Hg]    | none                     | is in doubt |
        | unknown | 1.5                  | not recorded   | not recorded | none                     | is in doubt |
        | unknown | not recorded         | not recorded   | not recorded | none                     | is in doubt |
