package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Invented courses; the definitions themselves are held by {@code TreatmentDefinitionsTest}. */
class TreatmentTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final String SCORED =
            "{\"pain\":%d,\"varicoseVeins\":1,\"venousOedema\":0,\"pigmentation\":0,\"inflammation\":0,\"induration\":0,"
                    + "\"numberOfActiveUlcers\":0,\"longestUlcerDuration\":0,\"largestUlcerSize\":0,\"compressionUse\":0}";

    @Test
    void aVeinThatWasClosedAndOpens() {
        Course.SegmentCourse segment = segment(
                "laser-1470-radial",
                "adhesive-open-stump",
                visit(6, "\"openLengthCm\":2,\"refluxSeconds\":0"),
                visit(80, "\"openLengthCm\":5.5,\"refluxSeconds\":0.6"),
                visit(400, "\"openLengthCm\":30"));
        assertEquals(
                List.of(ClosureState.CLOSED, ClosureState.REOPENED, ClosureState.REOPENED),
                segment.visits().stream().map(Course.SeenAt::state).toList());
        assertEquals(
                List.of(Course.Reflux.NONE_THAT_COUNTS, Course.Reflux.CAME_BACK, Course.Reflux.NOT_RECORDED),
                segment.visits().stream().map(Course.SeenAt::reflux).toList());
    }

    /** Reopened above 5 cm: common practice, no source; the definitions S-0022 (memory) and S-0023. */
    @ParameterizedTest
    @CsvSource({
        "adhesive-open-stump, 5, CLOSED",
        "adhesive-open-stump, 5.1, PARTLY_OPEN",
        "adhesive-open-stump, 30, OPEN",
        "mechanochemical-open-part, 10, CLOSED",
        "mechanochemical-open-part, 10.1, PARTLY_OPEN",
        "mechanochemical-occluded-share, 4.5, CLOSED",
        "mechanochemical-occluded-share, 4.6, PARTLY_OPEN",
        "heat-open-part, 5, CLOSED",
        "heat-open-part, 5.1, PARTLY_OPEN",
        "heat-no-flow, 0, CLOSED",
        "heat-no-flow, 0.1, PARTLY_OPEN"
    })
    void oneVeinByEachDefinition(String definition, double openCm, ClosureState expected) {
        assertEquals(
                expected,
                segment("adhesive", definition, visit(6, "\"openLengthCm\":" + openCm))
                        .visits()
                        .get(0)
                        .state());
    }

    @Test
    void whatIsNotRecordedIsNeverClosed() {
        Treatment treatment = treatment("adhesive", "adhesive-open-stump", visit(6, "\"clot\":\"none\""));
        assertEquals(
                ClosureState.NOT_RECORDED,
                treatment.limbs().get(0).segments().get(0).visits().get(0).state());
        assertEquals(List.of(), treatment.closed());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    "clot":"up-to-junction"                         | I         | clot.class.i
                    "clot":"into-deep-vein","deepLumenPercent":40   | II        | clot.class.ii
                    "clot":"into-deep-vein","deepLumenPercent":50   | UNDEFINED | clot.class.undefined
                    "clot":"into-deep-vein","deepLumenPercent":60   | III       | clot.class.iii
                    "clot":"into-deep-vein","deepLumenPercent":100  | IV        | clot.class.iv
                    "clot":"into-deep-vein"                         |           | clot.share-missing
                    """)
    void classOfAClotAndWhatIsDone(String seen, HeatInducedThrombusClass expected, String done) { // S-0043
        Course.ClotFound clot = segment("laser-1470-radial", "adhesive-open-stump", visit(6, seen))
                .visits()
                .get(0)
                .clot()
                .orElseThrow();
        assertEquals(Optional.ofNullable(expected), clot.thrombusClass());
        assertEquals(done, clot.done().id());
        assertTrue(clot.caution().isEmpty());
    }

    @Test
    void theClassesWereMadeForHeat() {
        assertTrue(segment("adhesive", "adhesive-open-stump", visit(6, "\"clot\":\"up-to-junction\""))
                .visits()
                .get(0)
                .clot()
                .orElseThrow()
                .caution()
                .isPresent());
    }

    /** A clot inside is looked at every week, and only a scan that looked and saw it gone ends that. */
    @Test
    void scansAgainUntilTheClotHasDrawnBack() {
        String inside = visit(6, "\"clot\":\"into-deep-vein\",\"deepLumenPercent\":20");
        String elsewhere = visit(9, "\"openLengthCm\":0");
        assertEquals(13, next(inside).byDays());
        assertEquals(13, next(inside, elsewhere).byDays());
        assertEquals(91, next(inside, visit(13, "\"clot\":\"up-to-junction\"")).byDays());
    }

    @Test
    void aSegmentTreatedAgainStartsItsScansAnew() { // 1 week, then 1 to 3 months: common practice, no source
        String again = visit(80, "\"openLengthCm\":8,\"again\":\"foam\"");
        assertEquals(87, next(visit(6, "\"openLengthCm\":0"), again).byDays());
        assertEquals("scan.first.other", next(again).why().id());
        assertEquals(80 + 91, next(again, visit(86, "\"openLengthCm\":0")).byDays());
        assertEquals(
                365, next(visit(80, "\"openLengthCm\":8,\"again\":\"none\"")).byDays());
        String clot = visit(80, "\"clot\":\"into-deep-vein\",\"deepLumenPercent\":10,\"again\":\"foam\"");
        assertEquals(87, next(clot).byDays());
    }

    @Test
    void severityIsToldAsPlainChange() { // S-0083
        Course.SeverityChange change = severity(SCORED.formatted(3), SCORED.formatted(0));
        assertEquals(OptionalInt.of(4), change.before());
        assertEquals(OptionalInt.of(1), change.after());
        assertEquals(OptionalInt.of(-3), change.change());
    }

    @Test
    void aScoreWithAGapHasNoTotal_andSaysWhatIsMissing() {
        Course.SeverityChange change = severity("{\"pain\":3}", SCORED.formatted(0));
        assertTrue(change.before().isEmpty());
        assertTrue(change.change().isEmpty());
        assertEquals(9, change.missingBefore().size());
        assertEquals(List.of(), change.missingAfter());
    }

    @Test
    void sharesKeepTheirDefinitionAndDenominator() {
        Treatment treatment = treatment("adhesive", "mechanochemical-open-part", visit(6, "\"openLengthCm\":9"));
        Course.ClosedShare share = treatment.closed().get(0);
        assertEquals(ClosureDefinition.MECHANOCHEMICAL_OPEN_PART, share.definition());
        assertEquals(new Proportion(1, 1), share.closed());
        assertEquals(1, share.treated());
        assertEquals(
                List.of("L2"),
                treatment.notFollowed().stream().map(TreatedSegment::ref).toList());
    }

    @Test
    void aFollowUpOfAnotherCaseOrLegIsRefused() {
        FaultyInput refused = assertThrows(
                FaultyInput.class,
                () -> join(
                        plan("adhesive"),
                        bytes(followUp("adhesive-open-stump", "", "")
                                .replace("demo", "other")
                                .replace("left", "right"))));
        assertEquals(2, refused.faults().size());
        assertTrue(refused.getMessage().contains("the plan treats none of that name in the right leg"));
    }

    @Test
    void aPlanOfAnotherFormatIsRefused() {
        FaultyInput refused = assertThrows(
                FaultyInput.class,
                () -> join(bytes("{\"format\":\"tunica-case/1\"}"), bytes(followUp("adhesive-open-stump", "", ""))));
        assertTrue(refused.getMessage().contains("tunica-plan/1"));
    }

    @Test
    void whatWasDeliveredGoesBeforeThePlan() {
        Treatment treatment = Treatment.of(
                TreatedPlan.read("plan", plan("laser-1470-radial"), KNOWLEDGE),
                List.of(delivered("{\"ref\":\"L1\",\"technique\":\"adhesive\",\"treatedLengthCm\":30},"
                        + "{\"ref\":\"L2\",\"notDone\":\"no access\"}")),
                FollowUp.read("follow-up", bytes(followUp("adhesive-open-stump", "", "")), KNOWLEDGE),
                KNOWLEDGE);
        assertEquals(
                "adhesive", treatment.limbs().get(0).segments().get(0).treated().technique());
        assertEquals(List.of(), treatment.notFollowed());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"ref":"L1","technique":"adhesive","treatedLengthCm":28} | says 28 cm were treated, this says 30
                    {"ref":"L1","notDone":"no access"}                       | what was delivered treats none of that name
                    {"ref":"L9","technique":"adhesive"}                      | was delivered and is not in the plan
                    """)
    void whatWasDeliveredMustBelongToIt(String segment, String expected) {
        TreatedPlan plan = TreatedPlan.read("plan", plan("adhesive"), KNOWLEDGE);
        FollowUp followUp = FollowUp.read("follow-up", bytes(followUp("adhesive-open-stump", "", "")), KNOWLEDGE);
        List<DeliveredSession> delivered = List.of(delivered(segment));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> Treatment.of(plan, delivered, followUp, KNOWLEDGE));
        assertTrue(refused.getMessage().contains(expected), refused.getMessage());
    }

    private static DeliveredSession delivered(String segments) {
        return DeliveredSession.read(
                "delivered",
                bytes("{\"format\":\"tunica-delivered/1\",\"caseRef\":\"demo\",\"segments\":[" + segments + "]}"),
                KNOWLEDGE);
    }

    private static Treatment join(byte[] plan, byte[] followUp) {
        return Treatment.of(
                TreatedPlan.read("plan", plan, KNOWLEDGE),
                List.of(),
                FollowUp.read("follow-up", followUp, KNOWLEDGE),
                KNOWLEDGE);
    }

    private static ScanPlan.Scan next(String... visits) {
        return segment("laser-1470-radial", "adhesive-open-stump", visits).next();
    }

    private static Course.SeverityChange severity(String before, String after) {
        String json = followUp(
                "adhesive-open-stump", "\"vcssBefore\":" + before + ",", "{\"daysAfter\":90,\"vcss\":" + after + "}");
        return join(plan("adhesive"), bytes(json)).limbs().get(0).severity();
    }

    private static Course.SegmentCourse segment(String technique, String definition, String... visits) {
        return treatment(technique, definition, visits)
                .limbs()
                .get(0)
                .segments()
                .get(0);
    }

    private static Treatment treatment(String technique, String definition, String... visits) {
        return join(plan(technique), bytes(followUp(definition, "", String.join(",", visits))));
    }

    private static String visit(int day, String seen) {
        return "{\"daysAfter\":" + day + ",\"segments\":[{\"ref\":\"L1\"," + seen + "}]}";
    }

    private static String followUp(String definition, String before, String visits) {
        return "{\"format\":\"tunica-followup/1\",\"caseRef\":\"demo\",\"limbs\":[{\"side\":\"left\"," + before
                + "\"treated\":[{\"ref\":\"L1\",\"treatedLengthCm\":30,\"closure\":\"" + definition + "\"}],"
                + "\"visits\":[" + visits + "]}]}";
    }

    private static byte[] plan(String technique) {
        String step =
                "{\"ref\":\"%s\",\"side\":\"left\",\"vein\":\"great-saphenous\",\"level\":\"thigh\",\"technique\":\""
                        + technique + "\"}";
        return bytes("{\"format\":\"tunica-plan/1\",\"caseRef\":\"demo\",\"sessions\":[{\"steps\":["
                + step.formatted("L1") + "," + step.formatted("L2") + "]}]}");
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
