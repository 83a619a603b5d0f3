# What a site says of its costs counts when it is asked how firm a ranking is, and nowhere else. Common practice, no source.
Feature: A site may say which of its techniques cost it little and which much

  Rule: cost is one more thing that may matter among techniques that stand alike

    Scenario: of two first choices that are even on points, the dearer one holds its place less firmly
      Given the demo case even-first-choices-with-cost-classes
      Then cost is weighed
      And rf-segmental-7cm leads less often than without cost classes
      And laser-1470-radial leads more often than without cost classes
      And standings, points and ranks are those without cost classes

    Scenario: a low cost class lifts nothing over a better standing, even where cost comes first
      Given the demo case even-first-choices-with-cost-classes
      And low-cost is what matters most
      Then cost is weighed
      And foam-polidocanol never leads
      And standings, points and ranks are those without cost classes

  Rule: a technique without a class counts as a dear one

    Scenario: leaving out the class of a technique never helps it
      Given the demo case even-first-choices-with-cost-classes
      And the site gives laser-1470-radial no cost class
      Then laser-1470-radial leads as often as in the class high
      And it is said of laser-1470-radial that its cost counts as high
