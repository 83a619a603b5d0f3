Feature: Can the leg be compressed after the closure?

  Rule: CAU-013 heart failure forbids or limits compression

    @CAU-013
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-013 <says>
      And CAU-013 would caution moderately

      Examples:
        | kind    | technique         | history of conditions | says        |
        | hit     | laser-1470-radial | heart-failure-nyha-3  | speaks      |
        | hit     | foam-polidocanol  | heart-failure-nyha-4  | speaks      |
        | hit     | mechanochemical   | heart-failure-nyha-3  | speaks      |
        | miss    | laser-1470-radial | none                  | stays quiet |
        | miss    | adhesive          | heart-failure-nyha-4  | stays quiet |
        | unknown | laser-1470-radial | not recorded          | is in doubt |

  Rule: CAU-014 diabetes has numbed the foot or closed its small vessels

    @CAU-014
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-014 <says>
      And CAU-014 would caution moderately

      Examples:
        | kind    | technique         | history of conditions      | says        |
        | hit     | laser-1470-radial | diabetic-neuropathy-severe | speaks      |
        | hit     | foam-polidocanol  | diabetic-microangiopathy   | speaks      |
        | hit     | mechanochemical   | diabetic-neuropathy-severe | speaks      |
        | miss    | laser-1470-radial | none                       | stays quiet |
        | miss    | adhesive          | diabetic-neuropathy-severe | stays quiet |
        | unknown | laser-1470-radial | not recorded               | is in doubt |
