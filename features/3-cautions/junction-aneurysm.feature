Feature: Is the trunk ballooned near its junction?

  Rule: CAU-038 the trunk has an aneurysm near its junction

    @CAU-038
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then CAU-038 <says>
      And CAU-038 would caution strongly

      Examples:
        | kind    | technique          | history of conditions        | says        |
        | hit     | laser-1470-radial  | trunk-aneurysm-near-junction | speaks      |
        | hit     | adhesive           | trunk-aneurysm-near-junction | speaks      |
        | hit     | foam-sts           | trunk-aneurysm-near-junction | speaks      |
        | miss    | laser-1470-radial  | none                         | stays quiet |
        | miss    | focused-ultrasound | trunk-aneurysm-near-junction | stays quiet |
        | unknown | laser-1470-radial  | not recorded                 | is in doubt |
