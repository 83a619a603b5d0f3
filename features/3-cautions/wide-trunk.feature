Feature: Is the trunk wider than the technique was shown to close?

  Rule: CAU-022 the trunk is wider than a review accepts for techniques without heat

    @CAU-022
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-022 <says>
      And CAU-022 would caution slightly

      Examples:
        | kind    | technique         | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol  | great-saphenous | 6.1 mm         | speaks      |
        | hit     | adhesive          | small-saphenous | 7 mm           | speaks      |
        | limit   | mechanochemical   | great-saphenous | 6 mm           | stays quiet |
        | miss    | foam-polidocanol  | great-saphenous | 5 mm           | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 9 mm           | stays quiet |
        | miss    | foam-polidocanol  | tributary       | 7 mm           | stays quiet |
        | unknown | foam-polidocanol  | great-saphenous | not recorded   | is in doubt |

  Rule: CAU-023 the trunk is as wide as those that reopened after mechanochemical closure

    @CAU-023
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-023 <says>
      And CAU-023 would caution moderately

      Examples:
        | kind    | technique       | vein            | lumen diameter | says        |
        | hit     | mechanochemical | great-saphenous | 7.1 mm         | speaks      |
        | limit   | mechanochemical | great-saphenous | 7 mm           | stays quiet |
        | miss    | mechanochemical | great-saphenous | 6 mm           | stays quiet |
        | miss    | adhesive        | great-saphenous | 8 mm           | stays quiet |
        | miss    | mechanochemical | tributary       | 8 mm           | stays quiet |
        | unknown | mechanochemical | great-saphenous | not recorded   | is in doubt |

  Rule: CAU-024 the great saphenous vein is as wide as those that reopened after adhesive closure

    @CAU-024
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-024 <says>
      And CAU-024 would caution moderately

      Examples:
        | kind    | technique         | vein            | lumen diameter | says        |
        | hit     | adhesive          | great-saphenous | 10 mm          | speaks      |
        | limit   | adhesive          | great-saphenous | 9.5 mm         | speaks      |
        | miss    | adhesive          | great-saphenous | 9.4 mm         | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 10 mm          | stays quiet |
        | miss    | adhesive          | small-saphenous | 10 mm          | stays quiet |
        | unknown | adhesive          | great-saphenous | not recorded   | is in doubt |

  Rule: CAU-025 the trunk is very wide for foam or glue

    @CAU-025
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-025 <says>
      And CAU-025 would caution strongly

      Examples:
        | kind    | technique         | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol  | great-saphenous | 12.1 mm        | speaks      |
        | hit     | adhesive          | great-saphenous | 15 mm          | speaks      |
        | limit   | foam-polidocanol  | great-saphenous | 12 mm          | stays quiet |
        | miss    | foam-polidocanol  | great-saphenous | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | great-saphenous | 15 mm          | stays quiet |
        | miss    | foam-polidocanol  | tributary       | 14 mm          | stays quiet |
        | unknown | foam-polidocanol  | great-saphenous | not recorded   | is in doubt |

  Rule: CAU-026 the vein is wider than the longest laser wavelength was studied in

    @CAU-026
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-026 <says>
      And CAU-026 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | laser-1940-radial | 10.1 mm        | speaks      |
        | limit   | laser-1940-radial | 10 mm          | stays quiet |
        | miss    | laser-1940-radial | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | 11 mm          | stays quiet |
        | unknown | laser-1940-radial | not recorded   | is in doubt |

  Rule: CAU-027 the vein is wider than segmental radiofrequency was studied in

    @CAU-027
    Scenario Outline: <kind>: <technique>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then CAU-027 <says>
      And CAU-027 would caution moderately

      Examples:
        | kind    | technique         | lumen diameter | says        |
        | hit     | rf-segmental-7cm  | 18.1 mm        | speaks      |
        | hit     | rf-segmental-3cm  | 20 mm          | speaks      |
        | limit   | rf-segmental-7cm  | 18 mm          | stays quiet |
        | miss    | rf-segmental-7cm  | 6 mm           | stays quiet |
        | miss    | laser-1470-radial | 20 mm          | stays quiet |
        | unknown | rf-segmental-7cm  | not recorded   | is in doubt |
