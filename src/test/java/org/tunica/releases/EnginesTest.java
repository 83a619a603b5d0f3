package org.tunica.releases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.ReleaseState;
import org.tunica.knowledge.Bundle;
import org.tunica.plan.Advice;
import org.tunica.replay.ChangedSegment;
import org.tunica.signing.Withdrawal;
import org.tunica.store.Act;
import org.tunica.store.Page;

/** What runs: the release in force, one of an earlier day, and one that runs silently beside. */
class EnginesTest {
    private static final String CASE = "straight-thigh-trunk";

    @TempDir
    private Path folder;

    private String place = "";

    @BeforeEach
    void name() {
        place = folder.resolve("data").toString();
    }

    @Test
    void withoutARelease_theProgramsOwnRulesRunAsADraft() {
        try (Office office = Office.staffed(place)) {
            Engines.Engine engine = office.engines.inForce();
            assertEquals(Optional.empty(), engine.version());
            assertTrue(engine.notices().get(0).contains("DRAFT"));
            assertTrue(Office.advice(engine, CASE).contains("\"state\" : \"draft\""));
        }
    }

    /** A patient sheet and a note are marked on every page while the rules are a draft, and not when they are signed. */
    @Test
    void papers_areMarkedAsADraftUntilTheRulesAreSigned() {
        try (Office office = Office.staffed(place)) {
            assertEquals("DRAFT", mark(office.engines.inForce()));
            office.inForce("1.0.0", Office.RULES);
            assertEquals("", mark(office.engines.inForce()));
        }
    }

    private static String mark(Engines.Engine engine) {
        CaseFile caseFile = engine.tunica().readCase(CASE, Office.demo(CASE));
        return engine.tunica().treatments().sheet(caseFile, Map.of()).mark();
    }

    @Test
    void theReleaseInForce_saysItsVersionAndThatItIsActive() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            Engines.Engine engine = office.engines.inForce();
            Advice advice = engine.tunica().advise(engine.tunica().readCase(CASE, Office.demo(CASE)));
            assertEquals(
                    new Advice.Release("1.0.0", Advice.Release.State.ACTIVE, Office.RULES.digest()), advice.release());
            assertEquals(List.of(), engine.notices());
        }
    }

    /** Given under release 1 and kept; then release 2 comes into force, and is rolled back. */
    @Test
    void asOfAnEarlierDay_theAnswerIsTheSameBytes() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            String kept = Office.advice(office.engines.inForce(), CASE);
            office.hours(24);
            office.inForce("1.1.0", Office.WIDER_GAP);
            String second = Office.advice(office.engines.inForce(), CASE);
            assertNotEquals(kept, second);
            assertEquals(kept, Office.advice(office.engines.asOf("1.0.0"), CASE));
            assertEquals(kept, Office.advice(office.engines.asOf("2026-03-01T08:30:00Z"), CASE));
            office.hours(24);
            office.desk.rollBack(Office.BY, "too wide");
            office.hours(24);
            assertEquals(kept, Office.advice(office.engines.inForce(), CASE));
            assertEquals(second, Office.advice(office.engines.asOf("1.1.0"), CASE));
            assertEquals(second, Office.advice(office.engines.asOf("2026-03-02T12:00:00Z"), CASE));
            assertTrue(office.engines.asOf("1.1.0").notices().get(0).contains("which is not in force now"));
        }
    }

    @Test
    void asOfADayThatTellsTooLittle_isRefusedWithWhatHappened() {
        try (Office office = Office.staffed(place)) {
            refused(office, "2026-02-01", "no release was in force");
            office.inForce("1.0.0", Office.RULES);
            office.hours(26);
            office.inForce("1.1.0", Office.WIDER_GAP);
            office.hours(24);
            refused(office, "2026-03-01", "the draft gave way to release 1.0.0");
            refused(office, "2026-03-02", "release 1.0.0 gave way to release 1.1.0; name the version");
            assertEquals(Optional.of("1.1.0"), office.engines.asOf("2026-03-03").version());
            refused(office, "2030-01-01", "lies ahead");
            refused(office, "yesterday", "is neither a version kept here nor a day");
            refused(office, "7.0.0", "is neither a version kept here nor a day");
            office.desk.keep(Office.BY, office.files("1.2.0", Office.RULES));
            refused(office, "1.2.0", "never was in force");
        }
    }

    /** A key that turned out stolen since changes nothing of what was said then, but it is told. */
    @Test
    void asOfAnEarlierDay_theKeysCountAsTheyDidThen() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            String kept = Office.advice(office.engines.inForce(), CASE);
            office.hours(1);
            office.keyDesk.withdraw(Office.BY, "clara", "k1", Withdrawal.Reason.COMPROMISED);
            assertThrows(FaultyInput.class, office.engines::inForce);
            Engines.Engine then = office.engines.asOf("2026-03-01T08:30:00Z");
            assertEquals(kept, Office.advice(then, CASE));
            assertTrue(then.notices().toString().contains("By the keys as they count today: clinical lead clara"));
        }
    }

    @Test
    void anotherProgram_isTold() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            Engines later = new Engines(office.records, office.clock, new Program("10.0.0", Optional.empty()));
            assertEquals(
                    List.of("Release 1.0.0 was built with program 9.9.9; this is program 10.0.0, whose numbers may"
                            + " differ."),
                    later.inForce().notices());
        }
    }

    @Test
    void aShadow_isCountedAndNeverChangesTheAnswer() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            office.inReview("1.1.0", Office.withSkinGap("40"));
            Shadow shadow = new Shadow(office.store, office.engines);
            Engines.Engine spoke = office.engines.inForce();
            Advice said = spoke.tunica().advise(spoke.tunica().readCase(CASE, Office.demo(CASE)));
            String bytes = spoke.tunica().toJson(said);
            assertEquals(Optional.empty(), shadow.beside(spoke, Office.demo(CASE), said), "no shadow yet");
            office.desk.shadow(Office.BY, "1.1.0");
            ShadowRun run = shadow.beside(spoke, Office.demo(CASE), said).orElseThrow();
            assertEquals(Optional.empty(), run.failed());
            assertEquals(bytes, Office.advice(office.engines.inForce(), CASE));
            ShadowRun.Counts counts = shadow.counts("1.1.0");
            assertEquals(1, counts.runs());
            assertEquals(1, counts.casesChanged());
            assertEquals(1, counts.segmentsByKind().get(ChangedSegment.Kind.STANDING));
            assertTrue(
                    counts.segmentsByRule().keySet().stream().anyMatch(rule -> rule.startsWith("EXC")),
                    counts::toString);
            String kept = office.store.releases().shadowRuns("1.1.0").get(0).body();
            assertFalse(kept.contains(said.caseRef()) || kept.contains("L1"), kept);
            assertEquals(
                    Act.SHADOW_COMPARED.word(),
                    office.store.audit().newest(Page.newest(1)).get(0).act());
            office.desk.endShadow(Office.BY, "1.1.0");
            assertEquals(Optional.empty(), shadow.beside(spoke, Office.demo(CASE), said));
        }
    }

    @Test
    void aServer_asksTheShadowBehindEveryAdvice() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            office.inReview("1.1.0", Office.WIDER_GAP);
            office.desk.shadow(Office.BY, "1.1.0");
            try (ServedRules served =
                    new ServedRules(office.store, office.clock, Office.PROGRAM, Duration.ofMinutes(10))) {
                Office.advice(served.inForce(), CASE);
                Office.advice(served.inForce(), CASE);
            }
            ShadowRun.Counts counts = new Shadow(office.store, office.engines).counts("1.1.0");
            assertEquals(2, counts.runs());
            assertEquals(0, counts.failures());
        }
    }

    @Test
    void aShadowThatFails_isCountedAsAFailureAndThrowsNothing() {
        try (Office office = Office.staffed(place)) {
            office.inForce("1.0.0", Office.RULES);
            office.inReview("1.1.0", Office.WIDER_GAP);
            office.desk.shadow(Office.BY, "1.1.0");
            Shadow shadow = new Shadow(office.store, office.engines);
            Engines.Engine spoke = office.engines.inForce();
            Advice said = spoke.tunica().advise(spoke.tunica().readCase(CASE, Office.demo(CASE)));
            ShadowRun run = shadow.beside(spoke, new byte[] {'{'}, said).orElseThrow();
            assertEquals(Optional.of("FaultyInput"), run.failed());
            assertEquals(1, shadow.counts("1.1.0").failures());
            office.store.close();
            assertEquals(Optional.empty(), shadow.beside(spoke, Office.demo(CASE), said));
        }
    }

    @Test
    void whatTheProgramCannotRun_isNeverPutInForce() {
        Bundle broken = Bundle.of(Map.of(
                "rules/changes/0003-x.yaml",
                "number: \"0003\"\n",
                "knowledge/a.yaml",
                "b: 1\n",
                "rules/a.rule",
                "x\n"));
        assertThrows(FaultyInput.class, () -> Tunica.of(broken));
        try (Office office = Office.staffed(place)) {
            office.approved("1.0.0", broken);
            ReleaseDesk desk = new ReleaseDesk(office.store, office.clock);
            assertThrows(FaultyInput.class, () -> desk.activate(Office.BY, "1.0.0"));
            assertEquals(ReleaseState.APPROVED, office.records.story("1.0.0").stateAt(office.clock.instant()));
        }
    }

    private static void refused(Office office, String named, String says) {
        FaultyInput fault = assertThrows(FaultyInput.class, () -> office.engines.asOf(named));
        assertTrue(fault.getMessage().contains(says), fault::getMessage);
    }
}
