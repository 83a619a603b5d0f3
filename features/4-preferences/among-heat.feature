Feature: Which of the techniques that heat does best?

  Rule: PRE-026 the bipolar catheter drawn back by impedance closed fewer veins than its rivals

    @PRE-026
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then PRE-026 <says>
      And PRE-026 would disfavour strongly

      Examples:
        | kind | technique           | says        |
        | hit  | rf-bipolar-pullback | speaks      |
        | miss | rf-segmental-7cm    | stays quiet |
        | miss | laser-1470-radial   | stays quiet |

  Rule: PRE-027 the segmental element closed most veins in the trial that set it beside its rivals

    @PRE-027
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then PRE-027 <says>
      And PRE-027 would prefer slightly

      Examples:
        | kind | technique           | says        |
        | hit  | rf-segmental-7cm    | speaks      |
        | miss | rf-bipolar-pullback | stays quiet |
        | miss | laser-1470-radial   | stays quiet |

  Rule: PRE-028 a longer wavelength heats the wall rather than the blood

    @PRE-028
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then PRE-028 <says>
      And PRE-028 would prefer slightly

      Examples:
        | kind | technique          | says        |
        | hit  | laser-1470-radial  | speaks      |
        | hit  | laser-1470-forward | speaks      |
        | miss | laser-810-forward  | stays quiet |
        | miss | laser-1940-radial  | stays quiet |
        | miss | rf-segmental-7cm   | stays quiet |

  Rule: PRE-029 a bare forward tip burns one side of the wall

    @PRE-029
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then PRE-029 <says>
      And PRE-029 would disfavour slightly

      Examples:
        | kind | technique          | says        |
        | hit  | laser-980-forward  | speaks      |
        | hit  | laser-1470-forward | speaks      |
        | hit  | laser-810-forward  | speaks      |
        | miss | laser-1470-radial  | stays quiet |
        | miss | rf-segmental-7cm   | stays quiet |

  Rule: PRE-047 radiofrequency troubled the nerve beside the small saphenous vein more often than laser

    @PRE-047
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-047 <says>
      And PRE-047 would disfavour slightly

      Examples:
        | kind | technique           | vein            | says        |
        | hit  | rf-segmental-7cm    | small-saphenous | speaks      |
        | hit  | rf-bipolar-pullback | small-saphenous | speaks      |
        | hit  | rf-segmental-3cm    | small-saphenous | speaks      |
        | miss | rf-segmental-7cm    | great-saphenous | stays quiet |
        | miss | laser-1470-radial   | small-saphenous | stays quiet |
