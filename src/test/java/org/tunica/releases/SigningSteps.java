package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.sql.SQLException;
import java.util.Set;
import org.tunica.governance.Manifest;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.signing.Withdrawal;
import org.tunica.store.Engine;
import org.tunica.store.Role;
import org.tunica.store.User;

/** Who acknowledges, who signs, and with which key. */
public final class SigningSteps {
    private static final String FIRST = "1.0.0";

    private final Team team;

    /** Steps of a team. */
    public SigningSteps(Team team) {
        this.team = team;
    }

    @When("{word} acknowledges the replay")
    public void acknowledges(String person) {
        acknowledges(person, FIRST);
    }

    @When("{word} acknowledges the replay of release {word}")
    public void acknowledges(String person, String version) {
        team.tries(() -> team.office().sign(version, person, SigningRole.REVIEWER));
    }

    @When("{word} signs as clinical lead")
    public void signsAsClinicalLead(String person) {
        team.tries(() -> team.office().sign(FIRST, person, SigningRole.CLINICAL_LEAD));
    }

    @When("{word} signs as safety officer")
    public void signsAsSafetyOfficer(String person) {
        team.tries(() -> team.office().sign(FIRST, person, SigningRole.SAFETY_OFFICER));
    }

    @Given("alma is made clinical lead and has a new key for it")
    public void almaIsMadeClinicalLead() {
        Office office = team.office();
        User alma = office.store.users().find("alma").orElseThrow();
        office.store.users().save(Office.BY, alma.with(Set.of(Role.CLINICAL_LEAD)));
        office.keyDesk.withdraw(Office.BY, "alma", "k1", Withdrawal.Reason.NO_LONGER_USED);
        SigningKey key = SigningKey.fresh("alma", "k2");
        office.keyDesk.add(Office.BY, "alma", "k2", key.publicKey());
        office.hands.put("alma", key);
    }

    @Given("a second account {string} as clinical lead")
    public void aSecondAccount(String name) {
        team.office().keyDesk.addPerson(Office.BY, name, Set.of(Role.CLINICAL_LEAD));
    }

    @When("the key of {word} is added for {word}")
    public void theKeyIsAddedFor(String holder, String name) {
        String key = team.office().hands.get(holder).publicKey();
        team.tries(() -> team.office().keyDesk.add(Office.BY, name, "k1", key));
    }

    @When("somebody is to be clinical lead and safety officer")
    public void somebodyIsToBeBoth() {
        Set<Role> both = Set.of(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);
        team.tries(() -> team.office().keyDesk.addPerson(Office.BY, "both", both));
    }

    @When("the key of {word} is no longer used")
    public void isNoLongerUsed(String person) {
        end(person, Withdrawal.Reason.NO_LONGER_USED);
    }

    @When("the key of {word} is compromised")
    public void isCompromised(String person) {
        end(person, Withdrawal.Reason.COMPROMISED);
    }

    @When("the key of {word} is lost")
    public void isLost(String person) {
        end(person, Withdrawal.Reason.LOST);
    }

    private void end(String person, Withdrawal.Reason reason) {
        team.office().keyDesk.withdraw(Office.BY, person, "k1", reason);
    }

    @When("the signature of {word} under release {word} is handed in for release {word}")
    public void isHandedInFor(String person, String from, String to) {
        Office office = team.office();
        Signature old = office.records.signatures(from).list().stream()
                .filter(signature -> signature.statement().person().equals(person))
                .findFirst()
                .orElseThrow();
        Statement asked = office.signing.statement(to, old.statement().role(), person, "k1");
        team.tries(() -> office.signing.sign(new Signature(asked, old.value())));
    }

    @Given("a number in its files is changed behind the program")
    public void aNumberIsChanged() throws SQLException {
        Engine.SQLITE.behindItsBack(team.place(), "update releases set files = replace(files, 'a: 1', 'a: 9')");
    }

    @Then("the audit trail says that somebody changed it")
    public void theAuditTrailSays() {
        assertTrue(team.office()
                .store
                .audit()
                .verify()
                .faults()
                .toString()
                .contains("release 1.0.0: is not as audit row"));
    }

    @Then("that is refused: {string}")
    public void isRefused(String says) {
        assertTrue(team.refused().isPresent(), "nothing was refused");
        String message = team.refused().orElseThrow().getMessage();
        assertTrue(message.contains(says), message);
    }

    @Then("it still says {string}")
    public void itStillSays(String missing) {
        Manifest manifest = team.office().records.release(FIRST).files().manifest();
        assertFalse(team.office().records.signOff(manifest).complete());
        assertTrue(team.office().records.signOff(manifest).missing().contains(missing));
    }
}
