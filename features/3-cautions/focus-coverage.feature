Feature: Does the focus cover the whole vein?

  Rule: CAU-046 one row of lesions leaves part of the wall outside the focus

    @CAU-046
    Scenario Outline: <kind>: <technique>, wall thickness <wall thickness>
      Given a sound leg
      And the case says the wall thickness: <wall thickness>
      When <technique> is considered
      Then CAU-046 <says>
      And CAU-046 would caution moderately

      Examples:
        | kind    | technique          | wall thickness | says        |
        | hit     | focused-ultrasound | 0.9 mm         | speaks      |
        | miss    | focused-ultrasound | 0.3 mm         | stays quiet |
        | miss    | mechanochemical    | 0.9 mm         | stays quiet |
        | unknown | focused-ultrasound | not recorded   | is in doubt |
