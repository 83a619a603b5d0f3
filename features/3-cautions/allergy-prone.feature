Feature: Could the patient react to what is left in or around the vein?

  Rule: CAU-017 glue meets a patient with many allergies

    @CAU-017
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-017 <says>
      And CAU-017 would caution strongly

      Examples:
        | kind    | technique         | history of conditions  | says        |
        | hit     | adhesive          | multiple-allergy-atopy | speaks      |
        | miss    | adhesive          | none                   | stays quiet |
        | miss    | laser-1470-radial | multiple-allergy-atopy | stays quiet |
        | unknown | adhesive          | not recorded           | is in doubt |

  Rule: CAU-018 a sclerosant meets a patient with many allergies

    @CAU-018
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-018 <says>
      And CAU-018 would caution moderately

      Examples:
        | kind    | technique         | history of conditions  | says        |
        | hit     | foam-polidocanol  | multiple-allergy-atopy | speaks      |
        | hit     | mechanochemical   | multiple-allergy-atopy | speaks      |
        | miss    | foam-polidocanol  | none                   | stays quiet |
        | miss    | laser-1470-radial | multiple-allergy-atopy | stays quiet |
        | unknown | foam-polidocanol  | not recorded           | is in doubt |

  Rule: CAU-019 heat needs tumescence and the patient is allergic to its anaesthetic

    @CAU-019
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then CAU-019 <says>
      And CAU-019 would caution strongly

      Examples:
        | kind    | technique         | allergies         | says        |
        | hit     | laser-1470-radial | amide-anaesthetic | speaks      |
        | miss    | laser-1470-radial | none              | stays quiet |
        | miss    | foam-polidocanol  | amide-anaesthetic | stays quiet |
        | unknown | laser-1470-radial | not recorded      | is in doubt |

  Rule: CAU-065 the little local anaesthetic of a technique without heat is barred by an allergy

    @CAU-065
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then CAU-065 <says>
      And CAU-065 would caution moderately

      Examples:
        | kind    | technique          | allergies         | says        |
        | hit     | focused-ultrasound | amide-anaesthetic | speaks      |
        | hit     | adhesive           | amide-anaesthetic | speaks      |
        | hit     | mechanochemical    | amide-anaesthetic | speaks      |
        | miss    | laser-1470-radial  | amide-anaesthetic | stays quiet |
        | miss    | foam-polidocanol   | amide-anaesthetic | stays quiet |
        | miss    | adhesive           | polidocanol       | stays quiet |
        | unknown | focused-ultrasound | not recorded      | is in doubt |
