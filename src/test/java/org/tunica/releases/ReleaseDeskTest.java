package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseState;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.signing.Withdrawal;
import org.tunica.store.AuditRow;
import org.tunica.store.Engine;
import org.tunica.store.OutOfDate;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Releases in a real database, act by act. */
class ReleaseDeskTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void aRelease_goesFromDraftToForceAndBack(Engine engine) throws SQLException {
        try (Office office = Office.staffed(engine.freshPlace(folder))) {
            office.inForce("1.0.0", Office.RULES);
            office.inReview("1.1.0", Office.WIDER_GAP);
            office.signByAll("1.1.0");
            assertEquals(ReleaseState.APPROVED, state(office, "1.1.0"));
            office.desk.activate(Office.BY, "1.1.0");
            assertEquals(Optional.of("1.1.0"), office.versionInForce());
            assertEquals(ReleaseState.ACTIVE, state(office, "1.0.0"));
            office.hours(1);
            office.desk.rollBack(Office.BY, "it warned too often");
            assertEquals(Optional.of("1.0.0"), office.versionInForce());
            assertEquals(ReleaseState.RETIRED, state(office, "1.1.0"));
            refused(() -> office.desk.activate(Office.BY, "1.1.0"), "is retired and stays so; make a new version");
            assertEquals(
                    List.of(
                            "release-rolled-back",
                            "release-activated",
                            "release-approved",
                            "release-signed",
                            "release-signed",
                            "replay-acknowledged",
                            "release-submitted",
                            "release-built",
                            "release-kept"),
                    office.store.audit().newest(Page.newest(9)).stream()
                            .map(AuditRow::act)
                            .toList());
            assertEquals(List.of(), office.store.audit().verify().faults());
        }
    }

    @Test
    void nothingIsActivated_beforeItIsApproved() {
        try (Office office = office()) {
            office.desk.keep(Office.BY, office.files("1.0.0", Office.RULES));
            refused(() -> office.desk.activate(Office.BY, "1.0.0"), "is draft and must be approved before");
            refused(() -> office.sign("1.0.0", "rosa", SigningRole.REVIEWER), "is draft; only one in review is signed");
            office.desk.submit(Office.BY, "1.0.0");
            office.sign("1.0.0", "rosa", SigningRole.REVIEWER);
            office.sign("1.0.0", "clara", SigningRole.CLINICAL_LEAD);
            refused(() -> office.desk.activate(Office.BY, "1.0.0"), "is in review and must be approved before");
            assertEquals(Optional.empty(), office.versionInForce());
            refused(() -> office.desk.rollBack(Office.BY, "why"), "no release is in force");
            refused(() -> office.desk.activate(Office.BY, "2.0.0"), "there is none of that version");
        }
    }

    @Test
    void thePeopleOfAStore_areHeldToTheirPosts() {
        try (Office office = office()) {
            office.inReview("1.0.0", Office.RULES);
            refused(() -> office.sign("1.0.0", "alma", SigningRole.REVIEWER), "alma is an author of this release");
            office.sign("1.0.0", "rosa", SigningRole.REVIEWER);
            refused(() -> office.sign("1.0.0", "clara", SigningRole.SAFETY_OFFICER), "clara: is no safety officer");
            User clara = office.store.users().find("clara").orElseThrow();
            User gone = office.store.users().save(Office.BY, clara.in(UserState.LEFT));
            refused(() -> office.sign("1.0.0", "clara", SigningRole.CLINICAL_LEAD), "clinical lead clara: has left");
            office.store.users().save(Office.BY, gone.in(UserState.ACTIVE));
            office.sign("1.0.0", "clara", SigningRole.CLINICAL_LEAD);
            refused(
                    () -> office.sign("1.0.0", "clara", SigningRole.CLINICAL_LEAD),
                    "clara has signed already, as clinical lead");
            refused(
                    () -> office.keyDesk.addPerson(Office.BY, "both", Set.of(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER)),
                    "one person would then sign for two");
            refused(
                    () -> office.keyDesk.addPerson(Office.BY, "both", Set.of(Role.RULE_AUTHOR, Role.SAFETY_OFFICER)),
                    "whoever writes rules must not sign them");
        }
    }

    @Test
    void aReplayAgainstWhatIsNoLongerInForce_keepsAReleaseFromComingIntoForce() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.SMALL);
            office.approved("1.1.0", Office.RULES);
            office.approved("1.2.0", Office.WIDER_GAP);
            office.desk.activate(Office.BY, "1.1.0");
            office.hours(1);
            refused(
                    () -> office.desk.activate(Office.BY, "1.2.0"),
                    "the replay was made against other rules than those in force");
            assertEquals(Optional.of("1.1.0"), office.versionInForce());
        }
    }

    @Test
    void aPersonWhoLeavesLater_takesNoSignatureAway() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            User clara = office.store.users().find("clara").orElseThrow();
            office.store.users().save(Office.BY, clara.with(Set.of()).in(UserState.LEFT));
            assertEquals(Optional.of("1.0.0"), office.engines.inForce().version());
        }
    }

    @Test
    void aKey_isInOneHand() {
        try (Office office = office()) {
            SigningKey almas = office.hands.get("alma");
            office.keyDesk.addPerson(Office.BY, "a.second", Set.of(Role.CLINICAL_LEAD));
            refused(
                    () -> office.keyDesk.add(Office.BY, "a.second", "k1", almas.publicKey()),
                    "cannot have this key: alma has it");
        }
    }

    @Test
    void aSignature_isHandedInAtOnceAndWithAKeyInUse() {
        try (Office office = office()) {
            office.inReview("1.0.0", Office.RULES);
            Statement early = office.signing.statement("1.0.0", SigningRole.REVIEWER, "rosa", "k1");
            office.clock.move(Duration.ofMinutes(11));
            refused(() -> office.signing.sign(office.hands.get("rosa").sign(early)), "is handed in at once");
            office.keyDesk.withdraw(Office.BY, "rosa", "k1", Withdrawal.Reason.LOST);
            refused(() -> office.sign("1.0.0", "rosa", SigningRole.REVIEWER), "key k1 was withdrawn on 2026-03-01");
        }
    }

    @Test
    void aKeyThatWasStolen_stopsTheReleaseUntilAnotherPersonSigns() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            office.keyDesk.withdraw(Office.BY, "stefan", "k1", Withdrawal.Reason.NO_LONGER_USED);
            assertEquals(Optional.of("1.0.0"), office.engines.inForce().version());
            office.keyDesk.withdraw(Office.BY, "stefan", "k1", Withdrawal.Reason.COMPROMISED);
            refused(() -> office.engines.inForce(), "safety officer stefan: its key k1 was withdrawn: compromised");
            office.employ("sarah", Role.SAFETY_OFFICER);
            office.sign("1.0.0", "sarah", SigningRole.SAFETY_OFFICER);
            assertEquals(Optional.of("1.0.0"), office.engines.inForce().version());
            assertEquals(ReleaseState.ACTIVE, state(office, "1.0.0"));
        }
    }

    @Test
    void aPlannedActivation_comesByItselfAndMayNotLieBehind() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            office.approved("1.1.0", Office.WIDER_GAP);
            Instant tomorrow = office.clock.instant().plus(Duration.ofDays(1));
            refused(() -> office.desk.schedule(Office.BY, "1.1.0", office.clock.instant()), "which has passed");
            office.desk.schedule(Office.BY, "1.1.0", tomorrow);
            assertEquals(Optional.of("1.0.0"), office.versionInForce());
            office.clock.set(tomorrow);
            assertEquals(Optional.of("1.1.0"), office.engines.inForce().version());
        }
    }

    @Test
    void aReleaseThatRanOut_isRefusedAndNeverPassedOver() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            ReleaseFiles shortLived = office.files("1.1.0", Office.WIDER_GAP, Optional.of(LocalDate.of(2026, 4, 1)));
            office.desk.keep(Office.BY, shortLived);
            office.desk.submit(Office.BY, "1.1.0");
            office.signByAll("1.1.0");
            refused(
                    () -> office.desk.schedule(Office.BY, "1.1.0", Instant.parse("2026-04-02T00:00:00Z")),
                    "was made to be in force until 2026-04-01 and has run out");
            office.desk.activate(Office.BY, "1.1.0");
            office.clock.set(Instant.parse("2026-04-02T00:00:00Z"));
            refused(() -> office.engines.inForce(), "has run out; activate another release");
            office.desk.rollBack(Office.BY, "it ran out");
            assertEquals(Optional.of("1.0.0"), office.engines.inForce().version());
        }
    }

    @Test
    void theOneInForce_isNotRetiredAndTheOneBeforeIsNeverLost() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            refused(() -> office.desk.retire(Office.BY, "1.0.0", "old"), "is in force; put another in force first");
            refused(() -> office.desk.rollBack(Office.BY, "bad"), "there is no release before 1.0.0 to go back to");
            office.inForce("1.1.0", Office.WIDER_GAP);
            office.desk.retire(Office.BY, "1.0.0", "old");
            refused(() -> office.desk.rollBack(Office.BY, "bad"), "there is no release before 1.1.0 to go back to");
            refused(() -> office.desk.refuse(Office.BY, "1.1.0", " "), "reason: must be given");
        }
    }

    @Test
    void aVersion_isUsedOnceAndGoesUpwards() {
        try (Office office = office()) {
            office.inForce("1.1.0", Office.RULES);
            assertThrows(FaultyInput.class, () -> office.desk.keep(Office.BY, office.files("1.0.9", Office.WIDER_GAP)));
            office.desk.keep(Office.BY, office.files("1.2.0", Office.WIDER_GAP));
            assertThrows(OutOfDate.class, () -> office.desk.keep(Office.BY, office.files("1.2.0", Office.WIDER_GAP)));
        }
    }

    @Test
    void aReplayAgainstOtherRulesThanThoseInForce_isNotTaken() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            ReleaseFiles early = office.files("1.2.0", Office.SMALL);
            office.inForce("1.1.0", Office.WIDER_GAP);
            refused(() -> office.desk.keep(Office.BY, early), "made against other rules than those in force");
        }
    }

    @Test
    void aReview_isRecordedAndAnOverdueOneIsTold() {
        try (Office office = office()) {
            office.inForce("1.0.0", Office.RULES);
            assertEquals(List.of(), office.engines.inForce().notices());
            office.clock.set(Instant.parse("2027-03-02T00:00:00Z"));
            assertEquals(
                    List.of("Release 1.0.0 was to be reviewed by 2027-03-01; its review is overdue."),
                    office.engines.inForce().notices());
            office.desk.reviewed(Office.BY, "1.0.0", LocalDate.of(2028, 3, 1), "nothing new");
            assertEquals(List.of(), office.engines.inForce().notices());
        }
    }

    @Test
    void filesChangedBehindTheProgram_areFoundBeforeAnythingRuns() throws SQLException {
        String place = Engine.SQLITE.freshPlace(folder);
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            Engine.SQLITE.behindItsBack(
                    place, "update releases set files = replace(files, 'smallest distance', 'biggest  distance')");
            refused(() -> office.engines.inForce(), "knowledge/limits/distances.yaml: was changed");
            refused(() -> office.engines.asOf("1.0.0"), "knowledge/limits/distances.yaml: was changed");
            assertFalse(office.store.audit().verify().sound());
        }
    }

    private Office office() {
        try {
            return Office.staffed(Engine.SQLITE.freshPlace(folder));
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ReleaseState state(Office office, String version) {
        return office.records.story(version).stateAt(office.clock.instant());
    }

    private static void refused(Supplier<?> act, String says) {
        FaultyInput fault = assertThrows(FaultyInput.class, act::get);
        assertTrue(fault.getMessage().contains(says), fault::getMessage);
    }
}
