Feature: Is there reflux that would justify closing the vein?

  Rule: EXC-032 the trunk does not reflux

    @EXC-032
    Scenario Outline: <kind>: vein <vein>, reflux time <reflux time>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the reflux time: <reflux time>
      When laser-1470-radial is considered
      Then EXC-032 <says>

      Examples:
        | kind    | vein            | reflux time  | says        |
        | hit     | great-saphenous | 0.3 s        | speaks      |
        | limit   | great-saphenous | 0.5 s        | speaks      |
        | miss    | great-saphenous | 0.6 s        | stays quiet |
        | miss    | tributary       | 0.3 s        | stays quiet |
        | miss    | great-saphenous | 0.51 s       | stays quiet |
        | unknown | great-saphenous | not recorded | is in doubt |

  Rule: EXC-033 the perforator does not reflux

    @EXC-033
    Scenario Outline: <kind>: vein <vein>, reflux time <reflux time>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the reflux time: <reflux time>
      When foam-polidocanol is considered
      Then EXC-033 <says>

      Examples:
        | kind    | vein            | reflux time  | says        |
        | hit     | perforator      | 0.3 s        | speaks      |
        | limit   | perforator      | 0.5 s        | speaks      |
        | miss    | perforator      | 0.8 s        | stays quiet |
        | miss    | great-saphenous | 0.3 s        | stays quiet |
        | miss    | perforator      | 0.51 s       | stays quiet |
        | unknown | perforator      | not recorded | is in doubt |
