Feature: Can the patient lie as the technique asks?

  Rule: CAU-033 the patient cannot lie flat

    @CAU-033
    Scenario Outline: <kind>: <technique>, whether the patient can lie flat <whether the patient can lie flat>
      Given a sound leg
      And the case says whether the patient can lie flat: <whether the patient can lie flat>
      When <technique> is considered
      Then CAU-033 <says>
      And CAU-033 would caution moderately

      Examples:
        | kind    | technique         | whether the patient can lie flat | says        |
        | hit     | laser-1470-radial | no                               | speaks      |
        | hit     | foam-polidocanol  | no                               | speaks      |
        | miss    | laser-1470-radial | yes                              | stays quiet |
        | miss    | adhesive          | no                               | stays quiet |
        | unknown | laser-1470-radial | not recorded                     | is in doubt |

  Rule: CAU-034 the patient who would get foam cannot lie head-down

    @CAU-034
    Scenario Outline: <kind>: <technique>, whether the patient can lie head-down <whether the patient can lie head-down>
      Given a sound leg
      And the case says whether the patient can lie head-down: <whether the patient can lie head-down>
      When <technique> is considered
      Then CAU-034 <says>
      And CAU-034 would caution slightly

      Examples:
        | kind    | technique        | whether the patient can lie head-down | says        |
        | hit     | foam-polidocanol | no                                    | speaks      |
        | hit     | foam-sts         | no                                    | speaks      |
        | miss    | foam-polidocanol | yes                                   | stays quiet |
        | miss    | adhesive         | no                                    | stays quiet |
        | unknown | foam-polidocanol | not recorded                          | is in doubt |

  Rule: CAU-035 the small saphenous vein is to be reached in a patient who cannot lie prone

    @CAU-035
    Scenario Outline: <kind>: <technique>, vein <vein>, whether the patient can lie prone <whether the patient can lie prone>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says whether the patient can lie prone: <whether the patient can lie prone>
      When <technique> is considered
      Then CAU-035 <says>
      And CAU-035 would caution slightly

      Examples:
        | kind    | technique         | vein            | whether the patient can lie prone | says        |
        | hit     | laser-1470-radial | small-saphenous | no                                | speaks      |
        | miss    | laser-1470-radial | small-saphenous | yes                               | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | no                                | stays quiet |
        | miss    | foam-polidocanol  | small-saphenous | no                                | stays quiet |
        | unknown | laser-1470-radial | small-saphenous | not recorded                      | is in doubt |
