Feature: Where does the recurrence come from?

  Rule: CAU-080 a recurrence needs the whole leg scanned first

    @CAU-080
    Scenario Outline: <kind>: <technique>, vein <vein>
      Given a sound leg
      And the case says the vein: <vein>
      When <technique> is considered
      Then CAU-080 <says>
      And CAU-080 would caution slightly

      Examples:
        | kind | technique         | vein              | says        |
        | hit  | foam-polidocanol  | recurrent-channel | speaks      |
        | hit  | laser-1470-radial | recurrent-channel | speaks      |
        | miss | foam-polidocanol  | tributary         | stays quiet |
