Feature: How is the foam to be made and dosed?

  Rule: SET-010 foam stays under the ceiling of one session

    @SET-010
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then SET-010 <says>
      And SET-010 would set the foam volume of the session to 10 mL

      Examples:
        | kind | technique         | says        |
        | hit  | foam-polidocanol  | speaks      |
        | hit  | foam-sts          | speaks      |
        | miss | mechanochemical   | stays quiet |
        | miss | laser-1470-radial | stays quiet |

  Rule: SET-011 foam is made of much gas and little liquid

    @SET-011
    Scenario Outline: <kind>: <technique>
      Given a sound leg
      When <technique> is considered
      Then SET-011 <says>
      And SET-011 would keep the parts of gas to one part of liquid between 3 and 5

      Examples:
        | kind | technique         | says        |
        | hit  | foam-polidocanol  | speaks      |
        | hit  | foam-sts          | speaks      |
        | miss | mechanochemical   | stays quiet |
        | miss | laser-1470-radial | stays quiet |

  Rule: SET-012 a narrow trunk takes weak foam

    @SET-012
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-012 <says>
      And SET-012 would set the sclerosant strength to 1 %

      Examples:
        | kind    | technique        | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol | great-saphenous | 3.9 mm         | speaks      |
        | limit   | foam-polidocanol | great-saphenous | 4 mm           | stays quiet |
        | miss    | foam-polidocanol | great-saphenous | 6 mm           | stays quiet |
        | miss    | foam-polidocanol | tributary       | 3 mm           | stays quiet |
        | miss    | mechanochemical  | great-saphenous | 3 mm           | stays quiet |
        | unknown | foam-polidocanol | great-saphenous | not recorded   | is in doubt |

  Rule: SET-013 a trunk of middling width takes weak to strong foam

    @SET-013
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-013 <says>
      And SET-013 would keep the sclerosant strength between 1 % and 3 %

      Examples:
        | kind    | technique        | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol | great-saphenous | 6 mm           | speaks      |
        | limit   | foam-polidocanol | great-saphenous | 4 mm           | speaks      |
        | limit   | foam-sts         | great-saphenous | 8 mm           | speaks      |
        | miss    | foam-polidocanol | great-saphenous | 9 mm           | stays quiet |
        | miss    | foam-polidocanol | great-saphenous | 3 mm           | stays quiet |
        | miss    | foam-polidocanol | tributary       | 6 mm           | stays quiet |
        | miss    | mechanochemical  | great-saphenous | 6 mm           | stays quiet |
        | unknown | foam-polidocanol | great-saphenous | not recorded   | is in doubt |

  Rule: SET-014 a wide trunk takes strong foam

    @SET-014
    Scenario Outline: <kind>: <technique>, vein <vein>, lumen diameter <lumen diameter>
      Given a sound leg
      And the case says the vein: <vein>
      And the case says the lumen diameter: <lumen diameter>
      When <technique> is considered
      Then SET-014 <says>
      And SET-014 would set the sclerosant strength to 3 %

      Examples:
        | kind    | technique        | vein            | lumen diameter | says        |
        | hit     | foam-polidocanol | great-saphenous | 8.1 mm         | speaks      |
        | limit   | foam-polidocanol | great-saphenous | 8 mm           | stays quiet |
        | miss    | foam-polidocanol | great-saphenous | 6 mm           | stays quiet |
        | miss    | foam-polidocanol | tributary       | 9 mm           | stays quiet |
        | miss    | mechanochemical  | great-saphenous | 9 mm           | stays quiet |
        | unknown | foam-polidocanol | great-saphenous | not recorded   | is in doubt |

  Rule: SET-015 polidocanol foam for a tributary stays below the strength for trunks

    @SET-015
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then SET-015 <says>
      And SET-015 would keep the sclerosant strength between 0.5 % and 2 %

      Examples:
        | kind | technique        | vein            | says        |
        | hit  | foam-polidocanol | tributary       | speaks      |
        | miss | foam-polidocanol | great-saphenous | stays quiet |
        | miss | foam-sts         | tributary       | stays quiet |

  Rule: SET-016 tetradecyl sulphate foam for a tributary stays weak

    @SET-016
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then SET-016 <says>
      And SET-016 would keep the sclerosant strength between 0.5 % and 1 %

      Examples:
        | kind | technique        | vein            | says        |
        | hit  | foam-sts         | tributary       | speaks      |
        | miss | foam-sts         | great-saphenous | stays quiet |
        | miss | foam-polidocanol | tributary       | stays quiet |

  Rule: SET-017 a perforator or recurrent channel takes weak to strong foam

    @SET-017
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then SET-017 <says>
      And SET-017 would keep the sclerosant strength between 1 % and 3 %

      Examples:
        | kind | technique         | vein              | says        |
        | hit  | foam-polidocanol  | perforator        | speaks      |
        | hit  | foam-sts          | recurrent-channel | speaks      |
        | miss | foam-polidocanol  | great-saphenous   | stays quiet |
        | miss | laser-1470-radial | perforator        | stays quiet |
