package org.tunica.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.review.Difference;

/** A change from the working copy to the document with its checks. */
class ChangeChecksTest {
    private static final String PREGNANCY = "rules/2-exclusions/pregnancy.rule";

    @TempDir
    private Path folder;

    private Author anna;

    @BeforeEach
    void begin() throws IOException {
        anna = Author.at(folder.resolve("copy"));
    }

    @Test
    void aNumberThatMoves_isToldBeforeAndAfterAndBarredByNothing() {
        CheckedChange change = anna.widensTheGap().checked();

        assertEquals(Check.Result.WARN, change.result(), change.toJson());
        Difference number = change.differences().get(0);
        assertEquals("heat.skin-gap.min", number.id());
        assertEquals("value: was 5 mm, is 6 mm", number.details().get(0).sentence());
        assertTrue(change.lines().contains("-  value: 5\n+  value: 6\n"), change.lines());
        assertTrue(change.lines().contains("--- before/" + Author.DISTANCES + "\n"), change.lines());
        assertTrue(findings(change, Check.Question.UNVERIFIED).contains("heat.skin-gap.min"));
        assertTrue(findings(change, Check.Question.SCENARIOS).contains("a limit of EXC-007 moved"));
        CheckedChange.Told record = change.record().orElseThrow();
        assertEquals(List.of("heat.skin-gap.min"), record.lists().limits());
        assertEquals(List.of("S-0010"), record.lists().sources());
    }

    @Test
    void theDocument_isTheSameBytesAgainAndReadsBack() {
        CheckedChange change = anna.widensTheGap().checked();
        CheckedChange again =
                new ChangeChecks(anna.copy(), bundle -> Tunica.of(bundle).review(), Author.DAY).run();
        assertEquals(change.toJson(), again.toJson());
        assertEquals(change, CheckedChange.read("change", change.toJson()));
        anna.edits("features/2-exclusions/heat-near-skin.feature", "Feature:", "# looked at\nFeature:");
        assertNotEquals(change.digest(), anna.checked().digest(), "scenarios are part of what was checked");
    }

    @Test
    void nothingChanged_andNoReason_bars() {
        CheckedChange change = anna.checked();
        assertEquals(Check.Result.BAR, change.result());
        String findings = findings(change, Check.Question.RECORD);
        assertTrue(findings.contains("nothing differs"), findings);
        assertTrue(findings.contains("gives no reason yet"), findings);
    }

    @Test
    void whatChangedUnderItsOldNumber_bars() {
        anna.edits(Author.DISTANCES, "value: 5\n", "value: 6\n").because("why");
        assertTrue(
                findings(anna.checked(), Check.Question.RECORD)
                        .contains("heat.skin-gap.min changed and still names change 0003"),
                anna.checked().toJson());
    }

    @Test
    void anEarlierRecordThatWasEdited_bars() {
        anna.widensTheGap().edits("rules/changes/0003-distances-heat-must-keep.yaml", "title: ", "title: now ");
        assertTrue(
                findings(anna.checked(), Check.Question.EARLIER_RECORDS)
                        .contains("rules/changes/0003-distances-heat-must-keep.yaml was edited"),
                anna.checked().toJson());
    }

    @Test
    void aRuleWithoutHazardScenarioSourceAndDate_barsFourTimes() {
        String number = anna.number();
        anna.edits(
                        PREGNANCY,
                        "rule EXC-001",
                        "rule EXC-901  pregnancy keeps a clinic of our own from heat\n  source S-0003, published"
                                + "   change " + number + "   review by 2026-03   class contraindication\n"
                                + "  when the technique works by heat\n  and  the patient is pregnant\n  then exclude\n"
                                + "  because it can wait\n\nrule EXC-001")
                .because("a rule of our own, invented");
        CheckedChange change = anna.checked();
        assertBars(change, Check.Question.HAZARDS, "EXC-901");
        assertBars(change, Check.Question.SCENARIOS, "EXC-901 has no scenario of kind hit");
        assertBars(change, Check.Question.SOURCES, "EXC-901 calls itself published, but nobody read S-0003");
        assertBars(change, Check.Question.REVIEW_DATES, "EXC-901 is to be reviewed by 2026-03");
        assertEquals(List.of("EXC-901"), change.record().orElseThrow().lists().rules());
    }

    @Test
    void whatDoesNotLoad_isToldWithFileAndLineAndCheckedNoFurther() {
        anna.edits(PREGNANCY, "then exclude", "then forbid");
        CheckedChange change = anna.checked();
        assertEquals(1, change.checks().size());
        assertBars(change, Check.Question.LOADING, PREGNANCY + ":");
        assertEquals(change, CheckedChange.read("change", change.toJson()));
    }

    @Test
    void aRetiredRule_leavesItsRecordsAndSaysWhichHazardItControlled() {
        retire();
        CheckedChange change = anna.checked();
        assertEquals(Check.Result.WARN, change.result(), change.toJson());
        assertEquals(List.of("CAU-052"), change.record().orElseThrow().lists().retires());
        String findings = findings(change, Check.Question.RETIRED);
        assertTrue(findings.contains("CAU-052 ends"), findings);
        assertTrue(findings.contains("CAU-052 controlled HZ-"), findings);
    }

    @Test
    void anIdThatWasRetired_isNeverUsedAgain() {
        retire();
        anna.edits(PREGNANCY, "rule EXC-001", "rule CAU-052");
        assertBars(anna.checked(), Check.Question.LOADING, "CAU-052 was retired by change " + anna.number());
    }

    private void retire() {
        anna.removes("rules/3-cautions/blood-in-the-vein.rule")
                .removes("features/3-cautions/blood-in-the-vein.feature")
                .because("the caution never told anybody anything, invented");
    }

    @Test
    void aReviewThatIsOverdue_warnsWhereverItStands() {
        CheckedChange change = anna.widensTheGap().checked(LocalDate.of(2040, 1, 1));
        assertTrue(findings(change, Check.Question.REVIEW_DATES).contains("EXC-007 was to be reviewed by"));
    }

    @Test
    void whatItBeganWith_isNeverEdited() {
        anna.edits("before/" + Author.DISTANCES, "value: 5\n", "value: 6\n");
        FaultyInput refused = assertThrows(FaultyInput.class, () -> WorkingCopy.in(folder.resolve("copy")));
        assertTrue(refused.getMessage().contains("is not what the change began with"), refused.getMessage());
    }

    @Test
    void aChange_neverBeginsInAFolderThatIsThere() {
        FaultyInput refused = assertThrows(FaultyInput.class, () -> Author.at(folder.resolve("copy")));
        assertTrue(refused.getMessage().contains("exists already"), refused.getMessage());
    }

    private static void assertBars(CheckedChange change, Check.Question question, String finding) {
        Check check = check(change, question);
        assertEquals(Check.Result.BAR, check.result(), change.toJson());
        assertTrue(
                String.join("\n", check.findings()).contains(finding),
                () -> check.findings().toString());
    }

    private static String findings(CheckedChange change, Check.Question question) {
        return String.join("\n", check(change, question).findings());
    }

    private static Check check(CheckedChange change, Check.Question question) {
        return change.checks().stream()
                .filter(check -> check.question() == question)
                .findFirst()
                .orElseThrow();
    }
}
