Feature: Does the technique reach the whole wall of this very vein?

  Rule: PRE-030 the whole wall is reached

    @PRE-030
    Scenario Outline: <kind>: wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When mechanochemical is considered
      Then PRE-030 <says>
      And PRE-030 would prefer strongly

      Examples:
        | kind    | wall thickness | says        |
        | hit     | 0.3 mm         | speaks      |
        | miss    | 0.9 mm         | stays quiet |
        | unknown | not recorded   | is in doubt |

  Rule: PRE-031 the outer wall is left alive

    @PRE-031
    Scenario Outline: <kind>: <technique>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then PRE-031 <says>
      And PRE-031 would disfavour moderately

      Examples:
        | kind    | technique        | wall thickness | says        |
        | hit     | foam-polidocanol | 0.5 mm         | speaks      |
        | miss    | mechanochemical  | 0.3 mm         | stays quiet |
        | miss    | adhesive         | 0.9 mm         | stays quiet |
        | unknown | foam-polidocanol | not recorded   | is in doubt |
