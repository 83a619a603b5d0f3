package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.plan.Advice;

/** What is built, in review, in force, and what runs. */
public final class ForceSteps {
    private final Team team;
    private String demo = "";
    private String given = "";

    /** Steps of a team. */
    public ForceSteps(Team team) {
        this.team = team;
    }

    private Office office() {
        return team.office();
    }

    @Given("release {word} by alma is built")
    public void isBuilt(String version) {
        office().desk.keep(Office.BY, office().files(version, Office.SMALL));
    }

    @Given("release {word} by alma is in review")
    public void isInReview(String version) {
        office().inReview(version, Office.SMALL);
    }

    @Given("release {word} with a wider gap to the skin is in review")
    public void aWiderGapIsInReview(String version) {
        office().inReview(version, Office.WIDER_GAP);
    }

    @Given("everybody has signed release {word}")
    public void everybodyHasSigned(String version) {
        if (office().records.timeline().story(version).isEmpty()) {
            office().inReview(version, version.equals("1.0.0") ? Office.SMALL : Office.WIDER_GAP);
        }
        office().signByAll(version);
    }

    @Given("release {word} is in force")
    public void isInForce(String version) {
        inForce(version, Office.RULES);
    }

    @Given("release {word} with a wider gap to the skin is in force")
    public void aWiderGapIsInForce(String version) {
        inForce(version, Office.WIDER_GAP);
    }

    private void inForce(String version, Bundle bundle) {
        if (office().records.timeline().story(version).isEmpty()) {
            office().inReview(version, bundle);
        }
        office().signByAll(version);
        office().desk.activate(Office.BY, version);
        office().hours(1);
    }

    @Given("a release {word} made to be in force until {word} is in force")
    public void untilADay(String version, String day) {
        office().desk.keep(Office.BY, office().files(version, Office.RULES, Optional.of(LocalDate.parse(day))));
        office().desk.submit(Office.BY, version);
        office().signByAll(version);
        office().desk.activate(Office.BY, version);
    }

    @Given("release {word} is planned for {word}")
    public void isPlanned(String version, String moment) {
        office().desk.schedule(Office.BY, version, Instant.parse(moment));
    }

    @When("release {word} is put in force")
    public void isPutInForce(String version) {
        team.tries(() -> office().desk.activate(Office.BY, version));
    }

    @When("release {word} is withdrawn because {string}")
    public void isWithdrawn(String version, String why) {
        office().desk.withdraw(Office.BY, version, why);
    }

    @When("the release in force is rolled back because {string}")
    public void isRolledBack(String why) {
        team.tries(() -> office().desk.rollBack(Office.BY, why));
    }

    @When("release {word} runs as a shadow")
    public void runsAsAShadow(String version) {
        office().desk.shadow(Office.BY, version);
    }

    @Then("^release (\\S+) is (approved|retired|in review)$")
    public void stands(String version, String state) {
        assertEquals(
                state,
                office().records
                        .story(version)
                        .stateAt(office().clock.instant())
                        .words());
    }

    @Then("the rules that run are a draft")
    public void aDraftRuns() {
        assertEquals(Optional.empty(), office().engines.inForce().version());
    }

    @Then("release {word} runs")
    public void runs(String version) {
        assertEquals(Optional.of(version), office().versionInForce());
        if (!office().records.release(version).files().bundle().digest().equals(Office.SMALL.digest())) {
            assertEquals(Optional.of(version), office().engines.inForce().version());
        }
    }

    @Then("at {word} release {word} runs")
    public void runsAt(String moment, String version) {
        office().clock.set(Instant.parse(moment));
        runs(version);
    }

    @Then("nothing runs: {string}")
    public void nothingRuns(String says) {
        FaultyInput fault =
                assertThrows(FaultyInput.class, () -> office().engines.inForce());
        assertTrue(fault.getMessage().contains(says), fault::getMessage);
    }

    @Then("at {word} nothing runs: {string}")
    public void nothingRunsAt(String moment, String says) {
        office().clock.set(Instant.parse(moment));
        nothingRuns(says);
    }

    @Then("its user is told {string}")
    public void isTold(String says) {
        assertTrue(office().engines.inForce().notices().toString().contains(says));
    }

    @Given("an advice was given for the demo case {word}")
    public void anAdviceWasGiven(String name) {
        demo = name;
        Engines.Engine engine = office().engines.inForce();
        Advice said = engine.tunica().advise(engine.tunica().readCase(name, Office.demo(name)));
        given = engine.tunica().toJson(said);
        new Shadow(office().store, office().engines).beside(engine, Office.demo(name), said);
    }

    @Then("the advice for that case is another now")
    public void isAnotherNow() {
        assertNotEquals(given, Office.advice(office().engines.inForce(), demo));
    }

    @Then("as of release {word} it is the same to the byte")
    public void isTheSame(String version) {
        assertEquals(given, Office.advice(office().engines.asOf(version), demo));
    }

    @Then("it said that it is of release {word}")
    public void isOfRelease(String version) {
        assertTrue(given.contains("\"version\" : \"" + version + "\""), given.substring(0, 300));
    }

    @Then("{int} silent answer of release {word} is counted")
    public void isCounted(int count, String version) {
        ShadowRun.Counts counts = new Shadow(office().store, office().engines).counts(version);
        assertEquals(count, counts.runs());
        assertEquals(0, counts.failures());
    }
}
