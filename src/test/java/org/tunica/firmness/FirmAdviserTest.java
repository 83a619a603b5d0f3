package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Criterion;
import org.tunica.physics.Derived;
import org.tunica.plan.Advice;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.RankingFirmness;
import org.tunica.plan.Score;
import org.tunica.plan.SegmentAdvice;

/** How firm the rankings of the shipped cases are; every case is invented. */
class FirmAdviserTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final double ROUNDING = 0.01;

    @Test
    void ofTwoThatAreEvenOnPointsItIsToldWhatSettledIt() throws IOException {
        SegmentAdvice trunk = first("straight-thigh-trunk");
        FirmnessAdvice firmness = trunk.firmness().orElseThrow();
        assertEquals(trunk.options().get(0).score(), trunk.options().get(1).score());
        String tie = trunk.options().get(0).tie().orElseThrow().says();
        assertTrue(firmness.says().contains(tie), firmness.says());
    }

    @Test
    void sharesOfEverySegmentAddUp() throws IOException {
        for (SegmentAdvice segment : advise(json("both-legs-many-segments")).segments()) {
            FirmnessAdvice firmness = segment.firmness().orElseThrow();
            double first = 0;
            for (FirmnessAdvice.Option option : firmness.options()) {
                first += option.firstPlaceShare();
                assertEquals(option.firstPlaceShare(), option.rankShares().get(0));
                assertEquals(
                        1,
                        option.rankShares().stream().mapToDouble(share -> share).sum(),
                        ROUNDING);
            }
            assertEquals(firmness.options().isEmpty() ? 0 : 1, first, ROUNDING);
        }
    }

    @Test
    void onlyWhatIsRankedTellsAShare() throws IOException {
        for (OptionAdvice option : first("below-knee-trunk-near-nerve").options()) {
            assertEquals(option.standing().ranked(), option.firstPlaceShare().isPresent());
        }
    }

    /** The change that is told is put into the case, and the whole engine agrees; just short of it nothing changes. */
    @Test
    void theChangeThatIsToldLosesFirstPlace() throws IOException {
        String text = json("below-knee-trunk-near-nerve");
        SegmentAdvice trunk = advise(text).segments().get(0);
        FirmnessAdvice.Change change = change(trunk, "patient.weightKg");
        String field = "\"weightKg\": 84";
        assertTrue(text.contains(field));
        String leading = trunk.options().get(0).technique();
        assertEquals(leading, leading(text.replace(field, "\"weightKg\": " + change.holdsAt())));
        assertEquals(change.leads().orElseThrow(), leading(text.replace(field, "\"weightKg\": " + change.at())));
        assertNotEquals(leading, change.leads().orElseThrow());
    }

    /** From this index down compression must be less, whatever else holds; halving finds it. */
    @Test
    void halvingFindsTheLimitOfARule() throws IOException {
        FirmnessAdvice.Change change = change(first("defibrillator"), "limbs.ankleBrachialIndex");
        double limit = TUNICA.knowledge().value("ankle.index.reduced");
        assertTrue(change.at() <= limit && change.at() > limit - 0.01, change.toString());
    }

    @Test
    void aMissingWallIsWhatToMeasureNext_andNothingIsFirmBefore() throws IOException {
        SegmentAdvice trunk = first("missing-wall-thickness");
        FirmnessAdvice firmness = trunk.firmness().orElseThrow();
        assertEquals(RankingFirmness.State.NOT_FIRM, trunk.ranking().state());
        FirmnessAdvice.Missing next = firmness.measureNext().get(0);
        assertEquals("the wall thickness", next.noun());
        assertTrue(next.waiting().contains("rf-segmental-7cm"));
        assertTrue(next.changesFirstShare().isEmpty());
    }

    @Test
    void whatIsExcludedWhateverTheErrorTakesNoPart() throws IOException {
        SegmentAdvice shunt = first("symptomatic-shunt");
        List<String> taking = shunt.firmness().orElseThrow().options().stream()
                .map(FirmnessAdvice.Option::technique)
                .toList();
        for (String foam : List.of("foam-polidocanol", "foam-sts")) {
            assertEquals(OptionStanding.EXCLUDED, standing(shunt, foam));
            assertFalse(taking.contains(foam));
        }
    }

    @Test
    void inPregnancyNothingIsFirm() throws IOException {
        SegmentAdvice trunk = first("pregnancy");
        FirmnessAdvice firmness = trunk.firmness().orElseThrow();
        assertEquals(RankingFirmness.State.NONE, trunk.ranking().state());
        assertEquals(List.of(), firmness.options());
        assertEquals("nothing can be ranked", firmness.says());
    }

    /** A wish moves points and weights, is told, and lifts nothing over an exclusion. */
    @Test
    void aWishIsSeenAndNeverOverridesAnExclusion() throws IOException {
        String text = json("straight-thigh-trunk");
        SegmentAdvice before = advise(text).segments().get(0);
        SegmentAdvice after =
                advise(wishing(text, "\"avoid-needles\"")).segments().get(0);
        assertEquals(OptionStanding.EXCLUDED, standing(before, "mechanochemical"));
        assertEquals(OptionStanding.EXCLUDED, standing(after, "mechanochemical"));
        assertEquals(1, after.firmness().orElseThrow().preferences().size());
        Score points = option(after, "adhesive").scoreTree().orElseThrow();
        assertEquals(option(before, "adhesive").score().orElseThrow() + 0.5, points.value());
        assertTrue(points.parts().stream()
                .flatMap(part -> part.origin().stream())
                .anyMatch(origin -> origin.rule().equals(Optional.of("PRE-050"))
                        && origin.weight().equals("score.slight")));
    }

    @Test
    void whatIsWishedForWeighsMost() throws IOException {
        FirmnessAdvice firmness = advise(wishing(json("straight-thigh-trunk"), "\"avoid-repeat\""))
                .segments()
                .get(0)
                .firmness()
                .orElseThrow();
        for (FirmnessAdvice.Option option : firmness.options()) {
            option.centralWeights()
                    .forEach(weight -> assertTrue(weight.weightShare()
                            <= option.centralWeights()
                                    .get(Criterion.DURABILITY.ordinal())
                                    .weightShare()));
        }
    }

    /** An order of criteria moves weights, is recorded, and lifts nothing over an exclusion. */
    @Test
    void theOrderOfTheCaseIsKeptByEveryWeight() throws IOException {
        String text = json("straight-thigh-trunk");
        SegmentAdvice before = advise(text).segments().get(0);
        SegmentAdvice after = advise(wishing(text, "\"avoid-needles\"")
                        .replace("\"patient\"", "\"importance\": [\"short-session\", \"durability\"], \"patient\""))
                .segments()
                .get(0);
        FirmnessAdvice firmness = after.firmness().orElseThrow();
        assertEquals(List.of(Criterion.SHORT_SESSION, Criterion.DURABILITY), firmness.importance());
        assertTrue(firmness.preferences().get(0).contains("a short session, then lasting closure, then the rest"));
        for (FirmnessAdvice.Option option : firmness.options()) {
            List<FirmnessAdvice.Weight> weights = option.centralWeights();
            for (FirmnessAdvice.Weight weight : weights) {
                double mostOfAll =
                        weights.get(Criterion.SHORT_SESSION.ordinal()).weightShare();
                double second = weights.get(Criterion.DURABILITY.ordinal()).weightShare();
                assertTrue(weight.weightShare() <= mostOfAll);
                assertTrue(weight.criterion() == Criterion.SHORT_SESSION || weight.weightShare() <= second);
            }
        }
        for (OptionAdvice option : before.options()) {
            assertEquals(option.standing(), standing(after, option.technique()));
        }
    }

    /** A rate measured with one laser stands for all; the output says so where the rate is told. */
    @Test
    void aRateOfTheFamilyIsMarked() throws IOException {
        FirmnessAdvice firmness = first("straight-thigh-trunk").firmness().orElseThrow();
        for (FirmnessAdvice.Option option : firmness.options()) {
            boolean laser = option.technique().startsWith("laser-");
            assertEquals(laser ? 4 : option.rates().size(), option.rates().size());
            option.rates().stream()
                    .filter(rate -> laser)
                    .forEach(
                            rate -> assertTrue(rate.measuredWith().orElseThrow().contains("not read")));
            if (option.technique().equals("adhesive")) {
                assertEquals(Optional.empty(), option.rates().get(0).measuredWith());
            }
        }
    }

    /** Every number of a score leads to its weight, and a rule's to its source and limits. */
    @Test
    void everyPointLeadsToItsOrigin() throws IOException {
        for (OptionAdvice option : first("below-knee-trunk-near-nerve").options()) {
            option.scoreTree().ifPresent(tree -> {
                assertEquals(
                        tree.value(),
                        tree.parts().stream().mapToDouble(Score::value).sum());
                for (Score part : tree.parts()) {
                    Score.Origin origin = part.origin().orElseThrow();
                    assertEquals(TUNICA.knowledge().value(origin.weight()), Math.abs(part.value()));
                    origin.limits()
                            .forEach(limit -> assertEquals(TUNICA.knowledge().value(limit.id()), limit.value()));
                    for (String source : origin.source().split(" ")) {
                        assertFalse(TUNICA.knowledge().source(source).cites().isEmpty());
                    }
                }
            });
        }
    }

    private static String wishing(String text, String wishes) {
        assertTrue(text.contains("\"needleAversion\""));
        return text.replace("\"needleAversion\"", "\"preferences\": [" + wishes + "], \"needleAversion\"");
    }

    @Test
    void theSameCaseGivesTheSameBytes() throws IOException {
        String text = json("both-legs-many-segments");
        assertEquals(TUNICA.toJson(advise(text)), TUNICA.toJson(advise(text)));
    }

    @Test
    void anUnchangedSegmentIsComputedAsBefore() throws IOException {
        CaseFile caseFile = read(json("both-legs-many-segments"));
        for (Situation situation : Situation.of(caseFile)) {
            Derived derived = TUNICA.physics().derive(caseFile, situation.segment());
            assertEquals(derived, TUNICA.physics().deriveAtSameSettings(caseFile, situation.segment(), derived));
        }
    }

    /** What has no part in a heat setting is judged by the whole engine at once, so a change of it needs no second look. */
    @Test
    void whereNoSettingFollowsANumberKeptSettingsAreSoughtSettings() throws IOException {
        Situation measured =
                Situation.of(read(json("below-knee-trunk-near-nerve"))).get(0);
        Derived derived = TUNICA.physics().derive(measured.caseFile(), measured.segment());
        int compared = 0;
        for (MeasuredNumber number : MeasuredNumber.values()) {
            if (!number.setsHeat() && number.in(measured).isPresent()) {
                Situation other =
                        number.with(measured, 0.9 * number.in(measured).getAsDouble());
                assertEquals(
                        TUNICA.physics().derive(other.caseFile(), other.segment()),
                        TUNICA.physics().deriveAtSameSettings(other.caseFile(), other.segment(), derived),
                        number.path());
                compared++;
            }
        }
        assertTrue(compared >= 5, "only " + compared);
    }

    @Test
    void everyChangeTellsWhetherSettingsWereSought() throws IOException {
        for (FirmnessAdvice.Change change :
                first("below-knee-trunk-near-nerve").firmness().orElseThrow().whatWouldChange()) {
            boolean heat = MeasuredNumber.at(change.measurement()).setsHeat();
            assertEquals(
                    heat ? FirmnessAdvice.Change.Sought.SETTINGS_KEPT : FirmnessAdvice.Change.Sought.CONFIRMED,
                    change.sought(),
                    change.measurement());
        }
    }

    /** A minute: the whole engine seeks the settings of every heat device for walls nobody measured. */
    @Test
    @Tag("deep")
    void whatIsConfirmedIsWhatTheWholeEngineSays() throws IOException {
        String text = json("below-knee-trunk-near-nerve");
        SegmentAdvice trunk = TUNICA.adviseConfirmed(read(text)).segments().get(0);
        FirmnessAdvice.Change change = change(trunk, "limbs.segments.wallThicknessMm");
        String field = "\"wallThicknessMm\": 0.36";
        assertTrue(text.contains(field));
        String leading = trunk.options().get(0).technique();
        assertNotEquals(FirmnessAdvice.Change.Sought.SETTINGS_KEPT, change.sought());
        assertEquals(leading, leading(text.replace(field, "\"wallThicknessMm\": " + change.holdsAt())));
        if (change.sought() != FirmnessAdvice.Change.Sought.NOT_FOUND) {
            assertEquals(
                    change.leads().orElseThrow(), leading(text.replace(field, "\"wallThicknessMm\": " + change.at())));
        }
    }

    @Test
    void aThickerWallAtTheSameSettingIsReachedLess() throws IOException {
        CaseFile caseFile = read(json("straight-thigh-trunk"));
        Situation measured = Situation.of(caseFile).get(0);
        Derived derived = TUNICA.physics().derive(caseFile, measured.segment());
        Situation thicker = MeasuredNumber.WALL.with(measured, 0.5);
        Derived then = TUNICA.physics().deriveAtSameSettings(caseFile, thicker.segment(), derived);
        then.options()
                .forEach((technique, numbers) -> assertTrue(
                        numbers.wallFractionKilled().orElse(0)
                                <= derived.options()
                                        .get(technique)
                                        .wallFractionKilled()
                                        .orElse(0),
                        technique));
        assertTrue(then.options().get("laser-1470-radial").wallFractionKilled().orElseThrow() < 1);
    }

    private static FirmnessAdvice.Change change(SegmentAdvice segment, String measurement) {
        List<FirmnessAdvice.Change> changes = segment.firmness().orElseThrow().whatWouldChange();
        return changes.stream()
                .filter(change -> change.measurement().equals(measurement))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        changes.stream().map(FirmnessAdvice.Change::measurement).collect(Collectors.joining(", "))));
    }

    private static OptionStanding standing(SegmentAdvice segment, String technique) {
        return option(segment, technique).standing();
    }

    private static OptionAdvice option(SegmentAdvice segment, String technique) {
        return segment.options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    private static String leading(String text) {
        return advise(text).segments().get(0).options().get(0).technique();
    }

    private static SegmentAdvice first(String demo) throws IOException {
        return advise(json(demo)).segments().get(0);
    }

    private static Advice advise(String text) {
        return TUNICA.advise(read(text));
    }

    private static CaseFile read(String text) {
        return TUNICA.readCase("test", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String json(String demo) throws IOException {
        return Files.readString(Path.of("knowledge/demo/" + demo + ".json"));
    }
}
