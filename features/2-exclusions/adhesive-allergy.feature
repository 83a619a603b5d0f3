Feature: Has the patient reacted to tissue glue?

  Rule: EXC-013 the patient is allergic to cyanoacrylate

    @EXC-013
    Scenario Outline: <kind>: <technique>, allergies <allergies>
      Given a sound leg
      And the case says the allergies: <allergies>
      When <technique> is considered
      Then EXC-013 <says>

      Examples:
        | kind    | technique         | allergies     | says        |
        | hit     | adhesive          | cyanoacrylate | speaks      |
        | miss    | adhesive          | none          | stays quiet |
        | miss    | laser-1470-radial | cyanoacrylate | stays quiet |
        | unknown | adhesive          | not recorded  | is in doubt |

  Rule: EXC-014 an earlier adhesive closure ended in hypersensitivity

    @EXC-014
    Scenario Outline: <kind>: <technique>, history of conditions <history of conditions>
      Given a sound leg
      And the case says the history of conditions: <history of conditions>
      When <technique> is considered
      Then EXC-014 <says>

      Examples:
        | kind    | technique        | history of conditions           | says        |
        | hit     | adhesive         | hypersensitivity-after-adhesive | speaks      |
        | miss    | adhesive         | none                            | stays quiet |
        | miss    | foam-polidocanol | hypersensitivity-after-adhesive | stays quiet |
        | unknown | adhesive         | not recorded                    | is in doubt |
