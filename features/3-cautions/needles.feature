Feature: Can the patient bear the punctures?

  Rule: CAU-053 heat needs many punctures in a patient averse to needles

    @CAU-053
    Scenario Outline: <kind>: <technique>, needle aversion <needle aversion>
      Given a sound leg
      And the case says needle aversion: <needle aversion>
      When <technique> is considered
      Then CAU-053 <says>
      And CAU-053 would caution moderately

      Examples:
        | kind    | technique         | needle aversion | says        |
        | hit     | laser-1470-radial | yes             | speaks      |
        | miss    | laser-1470-radial | no              | stays quiet |
        | miss    | adhesive          | yes             | stays quiet |
        | unknown | laser-1470-radial | not recorded    | is in doubt |
