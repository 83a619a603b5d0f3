Feature: Will the treated vein be seen or felt?

  Rule: CAU-029 glue would lie just under the skin

    @CAU-029
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then CAU-029 <says>
      And CAU-029 would caution moderately

      Examples:
        | kind    | technique        | depth to the skin | says        |
        | hit     | adhesive         | 4 mm              | speaks      |
        | miss    | adhesive         | 15 mm             | stays quiet |
        | miss    | foam-polidocanol | 4 mm              | stays quiet |
        | unknown | adhesive         | not recorded      | is in doubt |

  Rule: CAU-030 heat would act on a trunk that has left its fascia

    @CAU-030
    Scenario Outline: <kind>: <technique>, vein <vein>, whether the vein lies within its fascia <whether the vein lies within its fascia>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says whether the vein lies within its fascia: <whether the vein lies within its fascia>
      When <technique> is considered
      Then CAU-030 <says>
      And CAU-030 would caution moderately

      Examples:
        | kind    | technique         | vein            | whether the vein lies within its fascia | says        |
        | hit     | laser-1470-radial | great-saphenous | no                                      | speaks      |
        | miss    | laser-1470-radial | great-saphenous | yes                                     | stays quiet |
        | miss    | laser-1470-radial | tributary       | no                                      | stays quiet |
        | miss    | adhesive          | great-saphenous | no                                      | stays quiet |
        | unknown | laser-1470-radial | great-saphenous | not recorded                            | is in doubt |

  Rule: CAU-076 fluid must push the vein further from the skin

    @CAU-076
    Scenario Outline: <kind>: <technique>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then CAU-076 <says>
      And CAU-076 would caution slightly

      Examples:
        | kind    | technique         | depth to the skin | says        |
        | hit     | laser-1470-radial | 7 mm              | speaks      |
        | hit     | rf-segmental-7cm  | 5 mm              | speaks      |
        | hit     | laser-1470-radial | 9.5 mm            | speaks      |
        | limit   | laser-1470-radial | 10 mm             | stays quiet |
        | miss    | laser-1470-radial | 4.9 mm            | stays quiet |
        | miss    | laser-1470-radial | 15 mm             | stays quiet |
        | miss    | adhesive          | 7 mm              | stays quiet |
        | unknown | laser-1470-radial | not recorded      | is in doubt |
