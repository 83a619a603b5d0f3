Feature: Does this perforator need closing now?

  Rule: CAU-054 a perforator in plain varicose disease is better left at first

    @CAU-054
    Scenario Outline: <kind>: vein <vein>, clinical class <clinical class>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the clinical class: <clinical class>
      When foam-polidocanol is considered
      Then CAU-054 <says>
      And CAU-054 would caution moderately

      Examples:
        | kind    | vein            | clinical class | says        |
        | hit     | perforator      | C2             | speaks      |
        | hit     | perforator      | C2r            | speaks      |
        | miss    | perforator      | C6             | stays quiet |
        | miss    | great-saphenous | C2             | stays quiet |
        | unknown | perforator      | not recorded   | is in doubt |

  Rule: CAU-055 the perforator is narrower than those held to be pathologic

    @CAU-055
    Scenario Outline: <kind>: vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When foam-polidocanol is considered
      Then CAU-055 <says>
      And CAU-055 would caution moderately

      Examples:
        | kind    | vein            | lumen diameter | says        |
        | hit     | perforator      | 3.4 mm         | speaks      |
        | limit   | perforator      | 3.5 mm         | stays quiet |
        | miss    | perforator      | 5 mm           | stays quiet |
        | miss    | great-saphenous | 3.4 mm         | stays quiet |
        | unknown | perforator      | not recorded   | is in doubt |

  Rule: CAU-075 the perforator lies in a leg without an ulcer, healed or open

    @CAU-075
    Scenario Outline: <kind>: <technique>, vein <vein>, clinical class <clinical class>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the clinical class: <clinical class>
      When <technique> is considered
      Then CAU-075 <says>
      And CAU-075 would caution moderately

      Examples:
        | kind    | technique         | vein            | clinical class | says        |
        | hit     | foam-polidocanol  | perforator      | C4b            | speaks      |
        | hit     | laser-1470-radial | perforator      | C3             | speaks      |
        | hit     | foam-polidocanol  | perforator      | C0             | speaks      |
        | hit     | foam-polidocanol  | perforator      | C1             | speaks      |
        | hit     | foam-polidocanol  | perforator      | C4a            | speaks      |
        | hit     | foam-polidocanol  | perforator      | C4c            | speaks      |
        | miss    | foam-polidocanol  | perforator      | C5             | stays quiet |
        | miss    | foam-polidocanol  | perforator      | C2             | stays quiet |
        | miss    | foam-polidocanol  | great-saphenous | C4b            | stays quiet |
        | unknown | foam-polidocanol  | perforator      | not recorded   | is in doubt |
