package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.After;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Actor;
import org.tunica.store.AuditRow;
import org.tunica.store.Cases;
import org.tunica.store.DocumentKind;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Judgement;
import org.tunica.store.NewDocument;
import org.tunica.store.Origin;
import org.tunica.store.Page;
import org.tunica.store.Store;
import org.tunica.watching.AnswerRate;
import org.tunica.watching.RuleRate;
import org.tunica.watching.UnverifiedNumber;
import org.tunica.watching.WatchReport;

/** What a governance team sees of rules in use. */
public final class WatchSteps {
    private static final Actor HOOK = new Actor("hook:ward-7");
    private static final Origin ORIGIN = new Origin("1.0.0", "sha256:" + "0".repeat(64), 1);
    private static final String SAYS_NOTHING = "{\"segments\":[]}";

    private final Watchroom room = new Watchroom();
    private final Store store = room.office.store;
    private int cases;
    private int cards;
    private String lastSetAside = "";
    private Optional<WatchReport> report = Optional.empty();
    private Optional<FaultyInput> refused = Optional.empty();

    @Given("{int} cases of which the rule {word} spoke in {int}, {int} days ago")
    public void cases(int count, String rule, int spoke, int daysAgo) {
        Instant now = Office.START;
        room.office.clock.set(now.minus(Duration.ofDays(daysAgo)));
        for (int i = 0; i < count; i++) {
            advice(i < spoke ? says(rule) : SAYS_NOTHING);
        }
        room.office.clock.set(now);
    }

    private static String says(String rule) {
        return "{\"segments\":[{\"options\":[{\"reasons\":[{\"rule\":\"" + rule + "\"}]}]}]}";
    }

    private void advice(String body) {
        String ref = "invented-" + ++cases;
        store.cases().save(Office.BY, ref, Cases.NONE, "{}");
        store.documents().keep(Office.BY, new NewDocument(DocumentKind.ADVICE, ref, 1, ORIGIN, body));
    }

    @Given("a card about {word} that rested on {word} was set aside, because {string}")
    public void setAside(String technique, String rule, String reason) {
        lastSetAside = card(technique, rule);
        answer(
                lastSetAside,
                "overridden",
                "{\"feedback\":[{\"overrideReason\":{\"reason\":{\"code\":\"" + reason + "\"}}}]}");
    }

    @Given("a card about {word} that rested on {word} was accepted")
    public void accepted(String technique, String rule) {
        answer(card(technique, rule), "accepted", "{\"feedback\":[{}]}");
    }

    private String card(String technique, String rule) {
        String card = "card-" + ++cards;
        store.cards()
                .keep(
                        HOOK,
                        new GivenCard(
                                card, "plan", "1.0.0", ORIGIN.releaseDigest(), technique, "careful", Set.of(rule)));
        return card;
    }

    private void answer(String card, String outcome, String body) {
        store.feedback().keep(HOOK, new HookFeedback("plan", card, outcome, Office.START.minusSeconds(60), body));
    }

    @When("{word} finds it appropriate that the card was set aside, because {string}")
    public void finds(String judge, String reason) {
        JudgeDesk desk = new JudgeDesk(store);
        try {
            desk.judge(new Actor(judge), judge, desk.lastOf(lastSetAside), Judgement.Finding.APPROPRIATE, reason);
            refused = Optional.empty();
        } catch (FaultyInput e) {
            refused = Optional.of(e);
        }
    }

    @When("the safety officer looks at the last {int} days and the {int} before")
    public void looks(int days, int before) {
        WatchDesk desk = new WatchDesk(store, room.office.engines, room.office.clock);
        report = Optional.of(desk.look(new Actor("stefan"), days, before));
    }

    private WatchReport report() {
        return report.orElseThrow();
    }

    @Then("{word} is told to speak more often")
    public void moreOften(String rule) {
        RuleRate first = report().rates().get(0);
        assertEquals(rule, first.rule());
        assertEquals(RuleRate.Drift.MORE_OFTEN, first.drift());
    }

    @Then("no other rule is told of")
    public void noOther() {
        assertEquals(1, report().alarms().size());
    }

    @Then("no rule is told of")
    public void none() {
        assertEquals(List.of(), report().alarms());
    }

    @Then("of {int} cards that rested on {word} {int} was set aside")
    public void ofCards(int all, String rule, int aside) {
        assertEquals(all, rate(rule).overridden().total());
        assertEquals(aside, rate(rule).overridden().events());
    }

    @Then("of {int} of them that somebody looked at {int} was set aside rightly")
    public void rightly(int looked, int right) {
        AnswerRate rate = report().ofRules().get(0);
        assertEquals(looked, rate.looked());
        assertEquals(right, rate.appropriate());
    }

    @Then("the reason most often given is {string}")
    public void reason(String reason) {
        assertEquals(reason, report().ofRules().get(0).reasons().get(0).reason());
    }

    private AnswerRate rate(String rule) {
        return report().ofRules().stream()
                .filter(rate -> rate.id().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    @Then("that finding is refused: {string}")
    public void refused(String reason) {
        assertTrue(refused.orElseThrow().getMessage().contains(reason));
    }

    @Then("{word} is listed as unchecked, feeding {word}")
    public void unchecked(String number, String rule) {
        UnverifiedNumber found = report().unverified().stream()
                .filter(one -> one.id().equals(number))
                .findFirst()
                .orElseThrow();
        assertTrue(found.rules().contains(rule));
    }

    @Then("the audit trail tells that somebody looked")
    public void toldOfTheLook() {
        AuditRow last = store.audit().newest(Page.newest(1)).get(0);
        assertEquals("rules-watched", last.act());
        assertEquals("stefan", last.actor());
    }

    @Then("the audit trail tells that stefan found something")
    public void toldOfTheFinding() {
        assertTrue(store.audit().newest(Page.newest(2)).stream()
                .anyMatch(row ->
                        row.act().equals("feedback-judged") && row.actor().equals("stefan")));
    }

    /** Closes the office. */
    @After
    public void close() throws IOException {
        room.close();
    }
}
