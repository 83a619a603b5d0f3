Feature: Is there something in the lumen that stops or endangers a catheter?

  Rule: EXC-019 a catheter would be pushed through fresh thrombus

    @EXC-019
    Scenario Outline: <kind>: <technique>, thrombus <thrombus>
      Given a sound leg
      And the case says the thrombus: <thrombus>
      When <technique> is considered
      Then EXC-019 <says>

      Examples:
        | kind    | technique         | thrombus     | says        |
        | hit     | laser-1470-radial | fresh        | speaks      |
        | hit     | adhesive          | fresh        | speaks      |
        | miss    | laser-1470-radial | none         | stays quiet |
        | miss    | foam-polidocanol  | fresh        | stays quiet |
        | unknown | laser-1470-radial | not recorded | is in doubt |

  Rule: EXC-020 old thrombus or webs block the way of a catheter

    @EXC-020
    Scenario Outline: <kind>: <technique>, thrombus <thrombus>
      Given a sound leg
      And the case says the thrombus: <thrombus>
      When <technique> is considered
      Then EXC-020 <says>

      Examples:
        | kind    | technique         | thrombus     | says        |
        | hit     | laser-1470-radial | organised    | speaks      |
        | hit     | mechanochemical   | webs         | speaks      |
        | miss    | laser-1470-radial | none         | stays quiet |
        | miss    | foam-polidocanol  | webs         | stays quiet |
        | unknown | laser-1470-radial | not recorded | is in doubt |

  Rule: EXC-021 an acute superficial thrombosis lies in or near the vein

    @EXC-021
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then EXC-021 <says>

      Examples:
        | kind    | technique         | history of conditions        | says        |
        | hit     | laser-1470-radial | superficial-thrombosis-acute | speaks      |
        | miss    | laser-1470-radial | none                         | stays quiet |
        | miss    | foam-polidocanol  | superficial-thrombosis-acute | stays quiet |
        | unknown | laser-1470-radial | not recorded                 | is in doubt |
