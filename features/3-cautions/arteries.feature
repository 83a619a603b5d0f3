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
