package org.tunica.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

class DerivedTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final Physics PHYSICS = new Physics(KNOWLEDGE);
    private static final String SEGMENT = "limbs.0.segments.0.";

    @Test
    void aStandingVeinWithoutSpasmIsAsMeasured() {
        SegmentNumbers numbers = derived(CaseTree.soundLeg()).segment();
        assertEquals(6, numbers.relaxedLumenMm().orElseThrow());
        assertEquals(0.5, numbers.relaxedWallMm().orElseThrow(), 1e-12);
        assertEquals(Math.PI * 9 * 350 / 1000, numbers.lumenVolumeMl().orElseThrow(), 1e-9);
    }

    @Test
    void aVeinInSpasmIsRelaxedByItsArea() {
        CaseTree tree = CaseTree.soundLeg()
                .set(SEGMENT + "lumenDiameterMm", 3.0)
                .set(SEGMENT + "wallThicknessMm", 1.0)
                .set(SEGMENT + "measured.inSpasm", true)
                .set(SEGMENT + "measured.relaxedLumenDiameterMm", 6.0);
        assertEquals(0.606, derived(tree).segment().relaxedWallMm().orElseThrow(), 5e-4);
    }

    @Test
    void inSpasmWithoutTheRelaxedLumenNothingIsGuessed() {
        CaseTree tree = CaseTree.soundLeg().set(SEGMENT + "measured.inSpasm", true);
        assertEquals(OptionalDouble.empty(), derived(tree).segment().relaxedWallMm());
        assertEquals(OptionalDouble.empty(), derived(tree).segment().lumenVolumeMl());
    }

    @Test
    void aLyingVeinIsBroughtUprightAndSaysSo() {
        SegmentNumbers numbers = derived(CaseTree.soundLeg().set(SEGMENT + "measured.posture", "lying"))
                .segment();
        assertEquals(6 / 0.81, numbers.relaxedLumenMm().orElseThrow(), 1e-9);
        assertTrue(numbers.standingEstimated());
        assertTrue(numbers.relaxedWallMm().orElseThrow() < 0.5);
    }

    @Test
    void bloodlessNeedsTheHeadDownPositionAndATumescentBed() {
        assertEquals(Optional.of(true), heat(CaseTree.soundLeg()).bloodless());
        assertEquals(
                Optional.of(false),
                heat(CaseTree.soundLeg().set("room.tiltTable", false)).bloodless());
        assertEquals(
                Optional.empty(),
                heat(CaseTree.soundLeg().set("room.tumescent", null)).bloodless());
        assertEquals(
                Optional.of(false),
                heat(CaseTree.soundLeg().set("room.tumescent", null).set("patient.canLie.headDown", false))
                        .bloodless());
    }

    @Test
    void theWallIsThinnerOnAThickerDevice() {
        Derived derived = derived(CaseTree.soundLeg());
        double radial =
                derived.options().get("laser-1470-radial").wallAtWorkMm().orElseThrow();
        double forward =
                derived.options().get("laser-1470-forward").wallAtWorkMm().orElseThrow();
        assertTrue(radial < forward);
        assertTrue(forward < derived.segment().collapsedWallMm().orElseThrow());
    }

    @Test
    void tumescentDoseOfOneTrunk() {
        assertEquals(350, heat(CaseTree.soundLeg()).tumescentMl().orElseThrow(), 1e-9);
        assertEquals(5, heat(CaseTree.soundLeg()).lidocaineMgPerKg().orElseThrow(), 1e-9);
    }

    @Test
    void anAllergyPassesOverTheDrugThatIsStockedToo() {
        CaseTree tree = CaseTree.soundLeg().set("patient.allergies", new String[] {"polidocanol"});
        OptionNumbers numbers = derived(tree).options().get("mechanochemical");
        assertEquals("sodium-tetradecyl-sulphate", numbers.drug().orElseThrow().drug());
    }

    private static OptionNumbers heat(CaseTree tree) {
        return derived(tree).options().get("laser-1470-radial");
    }

    private static Derived derived(CaseTree tree) {
        CaseFile caseFile = CaseFile.read("case", tree.bytes(), KNOWLEDGE);
        return PHYSICS.derive(caseFile, caseFile.limbs().get(0).segments().get(0));
    }
}
