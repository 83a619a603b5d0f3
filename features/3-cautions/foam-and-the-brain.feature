Feature: Could foam disturb the brain or the eyes?

  Rule: CAU-004 foam meets a silent shunt, migraine with aura or an unexplained stroke

    @CAU-004
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-004 <says>
      And CAU-004 would caution strongly

      Examples:
        | kind    | technique        | history of conditions      | says        |
        | hit     | foam-polidocanol | migraine-with-aura         | speaks      |
        | hit     | foam-sts         | cryptogenic-stroke         | speaks      |
        | hit     | foam-polidocanol | right-to-left-shunt-silent | speaks      |
        | miss    | foam-polidocanol | none                       | stays quiet |
        | miss    | adhesive         | migraine-with-aura         | stays quiet |
        | unknown | foam-polidocanol | not recorded               | is in doubt |

  Rule: CAU-005 foam disturbed the brain or the eyes before

    @CAU-005
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-005 <says>
      And CAU-005 would caution strongly

      Examples:
        | kind    | technique        | history of conditions         | says        |
        | hit     | foam-polidocanol | neurological-event-after-foam | speaks      |
        | miss    | foam-polidocanol | none                          | stays quiet |
        | miss    | mechanochemical  | neurological-event-after-foam | stays quiet |
        | unknown | foam-polidocanol | not recorded                  | is in doubt |

  Rule: CAU-006 no physiological gas is at hand for a patient at risk from foam

    @CAU-006
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>, gas for foam <gas for foam>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      And the case says the gas for foam: <gas for foam>
      When <technique> is considered
      Then CAU-006 <says>
      And CAU-006 would caution moderately

      Examples:
        | kind    | technique         | history of conditions         | gas for foam | says        |
        | hit     | foam-polidocanol  | migraine-with-aura            | air          | speaks      |
        | hit     | foam-polidocanol  | right-to-left-shunt-silent    | air          | speaks      |
        | hit     | foam-polidocanol  | cryptogenic-stroke            | air          | speaks      |
        | hit     | foam-polidocanol  | neurological-event-after-foam | air          | speaks      |
        | miss    | foam-polidocanol  | migraine-with-aura            | air, co2-o2  | stays quiet |
        | miss    | foam-polidocanol  | none                          | air          | stays quiet |
        | miss    | laser-1470-radial | migraine-with-aura            | air          | stays quiet |
        | unknown | foam-polidocanol  | not recorded                  | air          | is in doubt |
        | unknown | foam-polidocanol  | migraine-with-aura            | not recorded | is in doubt |
