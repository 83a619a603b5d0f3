Feature: Could the generator disturb an implant?

  Rule: CAU-037 current or microwaves would run near an implant

    @CAU-037
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-037 <says>
      And CAU-037 would caution strongly

      Examples:
        | kind    | technique           | history of conditions | says        |
        | hit     | rf-segmental-7cm    | pacemaker             | speaks      |
        | hit     | microwave           | defibrillator         | speaks      |
        | hit     | rf-bipolar-pullback | neurostimulator       | speaks      |
        | miss    | rf-segmental-7cm    | none                  | stays quiet |
        | miss    | laser-1470-radial   | pacemaker             | stays quiet |
        | unknown | rf-segmental-7cm    | not recorded          | is in doubt |
