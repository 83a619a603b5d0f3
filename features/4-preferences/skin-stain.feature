Feature: Would foam stain the skin over the trunk?

  Rule: PRE-037 foam in a shallow trunk stains the skin

    @PRE-037
    Scenario Outline: <kind>: <technique>, vein <vein>, depth to the skin <depth to the skin>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the depth to the skin: <depth to the skin>
      When <technique> is considered
      Then PRE-037 <says>
      And PRE-037 would disfavour slightly

      Examples:
        | kind    | technique        | vein            | depth to the skin | says        |
        | hit     | foam-polidocanol | great-saphenous | 3 mm              | speaks      |
        | miss    | foam-polidocanol | great-saphenous | 15 mm             | stays quiet |
        | miss    | foam-polidocanol | tributary       | 3 mm              | stays quiet |
        | miss    | adhesive         | great-saphenous | 3 mm              | stays quiet |
        | unknown | foam-polidocanol | great-saphenous | not recorded      | is in doubt |
