package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Reason;
import org.tunica.plan.SettingAdvice;

/** Rows of the evidence that rules decide, asked of the front door; the source beside each is that of the rule. */
class EvidenceVerdictsTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String SEGMENT = "limbs.0.segments.0.";
    private static final String LASER = "laser-1470-radial";

    private final CaseTree tree = CaseTree.soundLeg();

    /** Leaves out the wall where a row is not about heat, so that nothing is computed for heat. */
    private void withoutWall() {
        tree.set(SEGMENT + "wallThicknessMm", null);
    }

    private OptionAdvice option(String technique) {
        return TUNICA.advise(TUNICA.readCase("row", tree.bytes())).segments().get(0).options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    /** Rules that speak about an option, with the ids of their sources. */
    private Map<String, String> speaking(String technique) {
        OptionAdvice option = option(technique);
        return Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(List::stream)
                .filter(reason -> reason.inDoubt().isEmpty())
                .collect(Collectors.toMap(Reason::rule, Reason::source, (one, same) -> one));
    }

    private void rests(String rule, String source, String technique) {
        assertTrue(
                speaking(technique).getOrDefault(rule, "").contains(source), () -> rule + " of " + speaking(technique));
    }

    private void quiet(String rule, String technique) {
        assertFalse(speaking(technique).containsKey(rule), rule);
    }

    @Test
    void row17_theTrialOfTheSmallSaphenousVeinFixesThePullback() { // S-0025
        tree.set(SEGMENT + "vein", "small-saphenous").set(SEGMENT + "nerve.name", "sural");
        SettingAdvice pullback = option(LASER).settings().ranges().stream()
                .filter(setting -> setting.setting().equals("pullbackSecondsPerCm"))
                .findFirst()
                .orElseThrow();
        assertEquals(5.83, pullback.low().orElse(pullback.value().orElse(0)), 0.005);
        assertEquals("S-0025", pullback.source());
    }

    @Test
    void row23_mechanochemicalClosureAboveTheWidthOfItsBestResults() { // S-0023
        withoutWall();
        tree.set(SEGMENT + "lumenDiameterMm", 6.0);
        rests("PRE-021", "S-0023", "mechanochemical");
        tree.set(SEGMENT + "lumenDiameterMm", 5.9);
        quiet("PRE-021", "mechanochemical");
    }

    /** The case holds no height of puncture, so the rule speaks by the level heated: lower down the nerve is closer. */
    @Test
    void row24_lowInTheCalfTheSuralNerveWarnsAgainstHeat() { // S-0025
        tree.set(SEGMENT + "vein", "small-saphenous").set(SEGMENT + "nerve.name", "sural");
        tree.set(SEGMENT + "level", "ankle");
        rests("CAU-031", "S-0025", LASER);
        tree.set(SEGMENT + "level", "upper-calf");
        quiet("CAU-031", LASER);
    }

    @ParameterizedTest
    @CsvSource({"0.5, EXCLUDED", "0.6, PREFERRED"})
    void row27_refluxMustPassTheCutOff(double refluxS, OptionStanding standing) { // S-0010
        tree.set(SEGMENT + "refluxSeconds", refluxS);
        assertEquals(standing, option(LASER).standing());
    }

    @Test
    void row29_aShortRefluxOfAnAccessoryVeinIsNotAxial() { // S-0010
        tree.set(SEGMENT + "vein", "anterior-accessory");
        tree.set(SEGMENT + "lengthCm", 4).set(SEGMENT + "straightCm", 4);
        rests("CAU-057", "S-0010", LASER);
        tree.set(SEGMENT + "lengthCm", 5).set(SEGMENT + "straightCm", 5);
        quiet("CAU-057", LASER);
    }

    @Test
    void row30_ankleBrachialIndex() { // S-0044
        tree.set("limbs.0.ankleBrachialIndex", 0.59);
        rests("CAU-011", "S-0044", LASER);
        tree.set("limbs.0.ankleBrachialIndex", 0.60);
        quiet("CAU-011", LASER);
        rests("CAU-012", "S-0044", LASER);
    }

    /** The change itself stands in {@code VolumesAndReachTest}; the median brings a lying lumen upright. */
    @Test
    void row34_aLyingLumenIsBroughtUprightByTheMedian() { // S-0087
        withoutWall();
        tree.set(SEGMENT + "lumenDiameterMm", 6.5).set(SEGMENT + "measured.posture", "lying");
        double standingMm = TUNICA.advise(TUNICA.readCase("row", tree.bytes()))
                .segments()
                .get(0)
                .derived()
                .relaxedLumenMm()
                .orElseThrow();
        assertEquals(8.0, standingMm, 0.05);
    }

    @ParameterizedTest
    @CsvSource({"5, 30, false", "8, 40, true"})
    void row35_aLumenThatHoldsMoreThanTheFoamOfASession(double lumenMm, double lengthCm, boolean warns) { // S-0012
        withoutWall();
        tree.set(SEGMENT + "lumenDiameterMm", lumenMm);
        tree.set(SEGMENT + "lengthCm", lengthCm).set(SEGMENT + "straightCm", lengthCm);
        assertEquals(warns, speaking("foam-polidocanol").containsKey("CAU-049"));
    }

    @Test
    void row41_pregnancyDefersEveryTrunk() { // S-0004
        tree.set("patient.pregnant", true);
        TUNICA.knowledge().techniques().keySet().forEach(technique -> {
            assertEquals(OptionStanding.EXCLUDED, option(technique).standing());
            rests("EXC-001", "S-0004", technique);
        });
    }

    @Test
    void row42_aSymptomaticShuntBarsFoamAndNothingElse() { // S-0012
        tree.set("patient.conditions", List.of("right-to-left-shunt-symptomatic"));
        rests("EXC-015", "S-0012", "foam-polidocanol");
        rests("EXC-015", "S-0012", "foam-sts");
        assertEquals(OptionStanding.PREFERRED, option(LASER).standing());
    }

    @Test
    void row43_newVesselsInTheGroinAreFoamedAndNotHeated() { // S-0010
        tree.set(SEGMENT + "vein", "recurrent-channel").set(SEGMENT + "level", "groin");
        tree.set(SEGMENT + "course", "winding").set(SEGMENT + "straightCm", 2);
        rests("EXC-034", "S-0010", LASER);
        rests("PRE-012", "S-0010", "foam-polidocanol");
        assertEquals(OptionStanding.EXCLUDED, option(LASER).standing());
        assertTrue(option("foam-polidocanol").standing().ranked());
    }
}
