Feature: What suits the veins that are no trunks?

  Rule: PRE-011 foam comes first among these techniques for a tributary

    @PRE-011
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-011 <says>
      And PRE-011 would prefer as first choice

      Examples:
        | kind | technique         | vein            | says        |
        | hit  | foam-polidocanol  | tributary       | speaks      |
        | hit  | foam-sts          | tributary       | speaks      |
        | miss | foam-polidocanol  | great-saphenous | stays quiet |
        | miss | laser-1470-radial | tributary       | stays quiet |

  Rule: PRE-012 foam comes first for recurrent channels no catheter can pass

    @PRE-012
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-012 <says>
      And PRE-012 would prefer as first choice

      Examples:
        | kind    | technique        | vein              | course       | says        |
        | hit     | foam-polidocanol | recurrent-channel | very-winding | speaks      |
        | miss    | foam-polidocanol | recurrent-channel | straight     | stays quiet |
        | miss    | foam-polidocanol | tributary         | very-winding | stays quiet |
        | miss    | adhesive         | recurrent-channel | very-winding | stays quiet |
        | unknown | foam-polidocanol | recurrent-channel | not recorded | is in doubt |

  Rule: PRE-013 laser or radiofrequency comes first for a straight recurrent stump

    @PRE-013
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-013 <says>
      And PRE-013 would prefer as first choice

      Examples:
        | kind    | technique         | vein              | course       | says        |
        | hit     | laser-1470-radial | recurrent-channel | straight     | speaks      |
        | miss    | laser-1470-radial | recurrent-channel | winding      | stays quiet |
        | miss    | laser-1470-radial | tributary         | straight     | stays quiet |
        | miss    | steam             | recurrent-channel | straight     | stays quiet |
        | miss    | foam-polidocanol  | recurrent-channel | straight     | stays quiet |
        | miss    | microwave         | recurrent-channel | straight     | stays quiet |
        | unknown | laser-1470-radial | recurrent-channel | not recorded | is in doubt |

  Rule: PRE-014 foam can still close a straight recurrent channel

    @PRE-014
    Scenario Outline: <kind>: <technique>, vein <vein>, course <course>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the course: <course>
      When <technique> is considered
      Then PRE-014 <says>
      And PRE-014 would prefer moderately

      Examples:
        | kind    | technique         | vein              | course       | says        |
        | hit     | foam-polidocanol  | recurrent-channel | straight     | speaks      |
        | miss    | foam-polidocanol  | recurrent-channel | very-winding | stays quiet |
        | miss    | foam-polidocanol  | tributary         | straight     | stays quiet |
        | miss    | laser-1470-radial | recurrent-channel | straight     | stays quiet |
        | unknown | foam-polidocanol  | recurrent-channel | not recorded | is in doubt |

  Rule: PRE-015 heat suits a perforator that needs closing

    @PRE-015
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-015 <says>
      And PRE-015 would prefer moderately

      Examples:
        | kind | technique         | vein       | says        |
        | hit  | laser-1470-radial | perforator | speaks      |
        | miss | laser-1470-radial | tributary  | stays quiet |
        | miss | steam             | perforator | stays quiet |
        | miss | foam-polidocanol  | perforator | stays quiet |
        | miss | microwave         | perforator | stays quiet |

  Rule: PRE-016 focused ultrasound closed perforators in its own series

    @PRE-016
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then PRE-016 <says>
      And PRE-016 would prefer slightly

      Examples:
        | kind | technique          | vein            | says        |
        | hit  | focused-ultrasound | perforator      | speaks      |
        | miss | focused-ultrasound | great-saphenous | stays quiet |
        | miss | laser-1470-radial  | perforator      | stays quiet |

  Rule: PRE-017 foam reaches veins under badly changed skin

    @PRE-017
    Scenario Outline: <kind>: <technique>, vein <vein>, clinical class <clinical class>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the clinical class: <clinical class>
      When <technique> is considered
      Then PRE-017 <says>
      And PRE-017 would prefer slightly

      Examples:
        | kind    | technique         | vein            | clinical class | says        |
        | hit     | foam-polidocanol  | tributary       | C6             | speaks      |
        | hit     | foam-sts          | perforator      | C5             | speaks      |
        | miss    | foam-polidocanol  | tributary       | C2             | stays quiet |
        | miss    | foam-polidocanol  | great-saphenous | C6             | stays quiet |
        | miss    | laser-1470-radial | perforator      | C6             | stays quiet |
        | unknown | foam-polidocanol  | tributary       | not recorded   | is in doubt |
