Feature: What kind of technique is it?

  Rule: FIN-007 the technique neither heats nor needs tumescence

    @FIN-007
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then FIN-007 <says>

      Examples:
        | kind | technique          | says        |
        | hit  | foam-polidocanol   | speaks      |
        | hit  | mechanochemical    | speaks      |
        | hit  | adhesive           | speaks      |
        | miss | laser-1470-radial  | stays quiet |
        | miss | focused-ultrasound | stays quiet |

  Rule: FIN-008 the technique needs a straight way for a catheter

    @FIN-008
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then FIN-008 <says>

      Examples:
        | kind | technique          | says        |
        | hit  | rf-segmental-7cm   | speaks      |
        | hit  | mechanochemical    | speaks      |
        | hit  | adhesive           | speaks      |
        | miss | foam-sts           | stays quiet |
        | miss | focused-ultrasound | stays quiet |

  Rule: FIN-009 the technique relies on a sclerosant drug

    @FIN-009
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then FIN-009 <says>

      Examples:
        | kind | technique         | says        |
        | hit  | foam-polidocanol  | speaks      |
        | hit  | mechanochemical   | speaks      |
        | miss | adhesive          | stays quiet |
        | miss | laser-1470-radial | stays quiet |

  Rule: FIN-010 the technique drives current or microwaves through the tissue

    @FIN-010
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then FIN-010 <says>

      Examples:
        | kind | technique         | says        |
        | hit  | rf-segmental-7cm  | speaks      |
        | hit  | microwave         | speaks      |
        | hit  | rf-segmental-3cm  | speaks      |
        | miss | laser-1470-radial | stays quiet |
        | miss | steam             | stays quiet |
