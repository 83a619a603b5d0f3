package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.After;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.FaultyInput;
import org.tunica.proposal.Author;
import org.tunica.proposal.Check;
import org.tunica.proposal.CheckedChange;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.User;

/** A rule author at work. */
public final class ChangeSteps {
    private static final String PREGNANCY = "rules/2-exclusions/pregnancy.rule";

    private final Watchroom room = new Watchroom();
    private final ChangeDesk desk = new ChangeDesk(room.office.store, room.office.engines);
    private Optional<Author> author = Optional.empty();
    private Optional<FaultyInput> refused = Optional.empty();
    private long rowsBefore;

    @Given("anna begins a change of the rules in force")
    public void begins() throws IOException {
        room.office.store.users().save(Office.BY, User.fresh("anna", Set.of(Role.RULE_AUTHOR), ""));
        author = Optional.of(Author.at(room.folder.resolve("copy")));
        rowsBefore = room.office.store.audit().head().number();
    }

    private Author anna() {
        return author.orElseThrow();
    }

    @When("she moves the gap to the skin from 5 mm to 6 mm, because {string}")
    public void moves(String reason) {
        anna().widensTheGap().because(reason);
    }

    @When("she moves the gap to the skin from 5 mm to 6 mm and says no reason")
    public void movesSilently() throws IOException {
        anna().edits(Author.DISTANCES, "value: 5\n", "value: 6\n")
                .edits(Author.DISTANCES, "change: \"0003\"", "change: \"" + anna().number() + "\"");
        anna().copy().fillRecord(Optional.empty());
    }

    @When("she writes a rule EXC-901 that no scenario shows")
    public void writesARule() {
        anna().edits(
                        PREGNANCY,
                        "rule EXC-001",
                        "rule EXC-901  pregnancy keeps a clinic of our own from heat\n  source S-0900, unverified"
                                + "   change " + anna().number()
                                + "   review by 2027-03   class contraindication   hazard HZ-14\n"
                                + "  when the technique works by heat\n  and  the patient is pregnant\n  then exclude\n"
                                + "  because it can wait\n\nrule EXC-001")
                .because("a rule of our own, invented");
    }

    @When("she edits the earlier record 0003")
    public void editsARecord() {
        anna().widensTheGap().edits("rules/changes/0003-distances-heat-must-keep.yaml", "title: ", "title: now ");
    }

    @When("she retires the rule CAU-052")
    public void retires() {
        anna().removes("rules/3-cautions/blood-in-the-vein.rule")
                .removes("features/3-cautions/blood-in-the-vein.feature")
                .because("it never told anybody anything, invented");
    }

    @When("she gives the id CAU-052 to another rule")
    public void reuses() {
        anna().edits(PREGNANCY, "rule EXC-001", "rule CAU-052");
    }

    @When("she hands the change in")
    public void handsIn() {
        tries(() -> desk.submit(Office.BY, anna().copy(), anna().checked()));
    }

    @When("she takes the change back, because {string}")
    public void takesBack(String reason) {
        tries(() -> desk.withdraw(Office.BY, anna().number(), reason));
    }

    @Given("anna is a specialist and writes no rules")
    public void writesNoRules() {
        User anna = room.office.store.users().find("anna").orElseThrow();
        room.office.store.users().save(Office.BY, anna.with(Set.of(Role.SPECIALIST)));
    }

    private void tries(Runnable act) {
        try {
            act.run();
            refused = Optional.empty();
        } catch (FaultyInput e) {
            refused = Optional.of(e);
        }
    }

    @Then("the change says {string}")
    public void says(String sentence) {
        assertTrue(
                anna().checked().differences().stream()
                        .flatMap(difference -> difference.details().stream())
                        .anyMatch(detail -> detail.sentence().equals(sentence)),
                anna().checked()::toJson);
    }

    @Then("nothing bars the change")
    public void nothingBars() {
        assertNotEquals(
                Check.Result.BAR, anna().checked().result(), anna().checked().toJson());
    }

    @Then("the check of {string} warns of {string}")
    public void warns(String question, String finding) {
        check(question, Check.Result.WARN, finding);
    }

    @Then("the check of {string} bars it: {string}")
    public void bars(String question, String finding) {
        check(question, Check.Result.BAR, finding);
    }

    private void check(String question, Check.Result result, String finding) {
        CheckedChange change = anna().checked();
        Check check = change.checks().stream()
                .filter(one -> one.question().word().equals(question))
                .findFirst()
                .orElseThrow();
        assertEquals(result, check.result(), change.toJson());
        assertTrue(String.join("\n", check.findings()).contains(finding), change.toJson());
    }

    @Then("the change is in review")
    public void inReview() {
        assertEquals(Optional.empty(), refused);
        assertEquals(ChangeState.IN_REVIEW, desk.one(anna().number()).state());
    }

    @Then("the change is withdrawn")
    public void withdrawn() {
        assertEquals(ChangeState.WITHDRAWN, desk.one(anna().number()).state());
    }

    @Then("the change is refused: {string}")
    public void refused(String reason) {
        assertTrue(
                refused.orElseThrow().getMessage().contains(reason),
                () -> refused.orElseThrow().getMessage());
    }

    @Then("the audit trail tells that the change was handed in")
    public void told() {
        assertEquals(
                "change-submitted",
                room.office.store.audit().newest(Page.newest(1)).get(0).act());
    }

    @Then("the audit trail tells of nothing")
    public void toldOfNothing() {
        assertEquals(rowsBefore, room.office.store.audit().head().number());
    }

    @Then("whoever reads it later reads the very document that was checked")
    public void sameDocument() {
        HandedIn kept = desk.one(anna().number());
        assertEquals(anna().checked().toJson(), kept.document());
        assertEquals(anna().checked().digest(), kept.digest());
    }

    /** Closes the office. */
    @After
    public void close() throws IOException {
        room.close();
    }
}
