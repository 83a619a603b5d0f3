# The people are invented: Alma writes rules, Rosa reviews, Clara is clinical lead, Stefan is safety officer.
@governance
Feature: Who lets a release of rules into use?

  Background:
    Given release 1.0.0 by alma is in review

  Rule: a reviewer reads the replay, then a clinical lead and a safety officer sign

    Scenario: three people look at it, and it is approved
      When rosa acknowledges the replay
      And clara signs as clinical lead
      And stefan signs as safety officer
      Then release 1.0.0 is approved

    Scenario: two of them are not enough
      When rosa acknowledges the replay
      And clara signs as clinical lead
      Then release 1.0.0 is in review
      And it still says "no safety officer has signed it"

    Scenario: nobody signs what has not been replayed and read
      When clara signs as clinical lead
      Then that is refused: "nobody has acknowledged the replay yet"

  Rule: whoever wrote a release neither reviews nor signs it

    Scenario: the author acknowledges the own replay
      When alma acknowledges the replay
      Then that is refused: "alma is an author of this release"

    Scenario: the author becomes clinical lead and signs
      Given rosa acknowledges the replay
      And alma is made clinical lead and has a new key for it
      When alma signs as clinical lead
      Then that is refused: "alma is an author of this release"

    Scenario: the author opens a second account with the same key
      Given a second account "a.second" as clinical lead
      When the key of alma is added for a.second
      Then that is refused: "alma has it"

  Rule: two people, not one person twice

    Scenario: the clinical lead signs again
      Given rosa acknowledges the replay
      And clara signs as clinical lead
      When clara signs as clinical lead
      Then that is refused: "clara has signed already, as clinical lead; two people sign"

    Scenario: the clinical lead signs for the safety officer
      Given rosa acknowledges the replay
      And clara signs as clinical lead
      When clara signs as safety officer
      Then that is refused: "is no safety officer"

    Scenario: nobody is given both posts
      When somebody is to be clinical lead and safety officer
      Then that is refused: "one person would then sign for two"

  Rule: a signature covers what was seen and nothing else

    Scenario: a number is changed after the signatures
      Given everybody has signed release 1.0.0
      And a number in its files is changed behind the program
      When release 1.0.0 is put in force
      Then that is refused: "was changed: it has not the digest the manifest names"
      And the audit trail says that somebody changed it

    Scenario: a signature is carried over to the next release
      Given everybody has signed release 1.0.0
      And release 1.0.1 by alma is in review
      And rosa acknowledges the replay of release 1.0.1
      When the signature of clara under release 1.0.0 is handed in for release 1.0.1
      Then that is refused: "does not hold"

  Rule: keys can be ended

    Scenario: a key that is laid aside keeps what it signed
      Given release 1.0.0 is in force
      When the key of clara is no longer used
      Then release 1.0.0 runs

    Scenario: a key in other hands voids what it signed
      Given release 1.0.0 is in force
      When the key of clara is compromised
      Then nothing runs: "its key k1 was withdrawn: compromised"

    Scenario: a lost key signs no more
      When the key of rosa is lost
      And rosa acknowledges the replay
      Then that is refused: "key k1 was withdrawn"
