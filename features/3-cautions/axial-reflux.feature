Feature: Is the reflux of the accessory vein long enough to count?

  Rule: CAU-057 the reflux of the accessory vein is too short to be axial

    @CAU-057
    Scenario Outline: <kind>: vein <vein>, length <length>
      Given a sound leg
      And the case says the straight length: 4 cm
      And the case says the vein: <vein>
      And the case says the length: <length>
      When laser-1470-radial is considered
      Then CAU-057 <says>
      And CAU-057 would caution moderately

      Examples:
        | kind    | vein                | length       | says        |
        | hit     | anterior-accessory  | 4 cm         | speaks      |
        | hit     | anterior-accessory  | 4.8 cm       | speaks      |
        | hit     | posterior-accessory | 4.8 cm       | speaks      |
        | limit   | posterior-accessory | 5 cm         | stays quiet |
        | miss    | anterior-accessory  | 20 cm        | stays quiet |
        | miss    | great-saphenous     | 4 cm         | stays quiet |
        | unknown | anterior-accessory  | not recorded | is in doubt |
