Feature: May this wait until after the pregnancy?

  Rule: EXC-001 pregnancy defers every elective closure

    @EXC-001
    Scenario Outline: <kind>: <technique>, pregnancy <pregnancy>, sex <sex>
      Given a sound leg
      And the case says pregnancy: <pregnancy>
      And the case says the sex: <sex>
      When <technique> is considered
      Then EXC-001 <says>

      Examples:
        | kind    | technique         | pregnancy    | sex          | says        |
        | hit     | laser-1470-radial | yes          | female       | speaks      |
        | hit     | foam-polidocanol  | yes          | other        | speaks      |
        | miss    | laser-1470-radial | no           | female       | stays quiet |
        | miss    | laser-1470-radial | not recorded | male         | stays quiet |
        | unknown | laser-1470-radial | not recorded | female       | is in doubt |
        | hit     | laser-1470-radial | yes          | not recorded | speaks      |
        | unknown | laser-1470-radial | not recorded | other        | is in doubt |
        | unknown | laser-1470-radial | not recorded | not recorded | is in doubt |
