package org.tunica.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/** Rounding, threads and what a release must bring; numerics and form only, so no source. */
class HeatPlannerTest {
    @Test
    void upAndDown_keepWhatStandsOnAStep() {
        IntStream.rangeClosed(0, 200).forEach(i -> assertEquals(i / 100.0, HeatPlanner.up(i * 0.01)));
        IntStream.rangeClosed(0, 20).forEach(i -> assertEquals(i / 2.0, HeatPlanner.down(i * 0.5)));
        assertEquals(Double.doubleToLongBits(0.0), Double.doubleToLongBits(HeatPlanner.up(0)));
    }

    @Property(seed = "1")
    void up_isNeverThinnerNorAStepThicker(@ForAll @DoubleRange(min = 0, max = 5) double mm) {
        double up = HeatPlanner.up(mm);
        assertTrue(up >= mm - 1e-7 && up < mm + 0.01 + 1e-7, mm + " became " + up);
    }

    @Property(seed = "1")
    void down_isNeverWiderAndEndsAtTheFarthestGap(@ForAll @DoubleRange(min = 0, max = 60) double mm) {
        double down = HeatPlanner.down(mm);
        assertTrue(down <= mm + 1e-6 && down <= 10, mm + " became " + down);
        assertTrue(down > Math.min(mm, 10) - 0.5, mm + " became " + down);
    }

    @Test
    void manyThreads_findWhatOneFinds() {
        Knowledge knowledge = Knowledge.of(Bundle.shipped());
        CaseFile caseFile = CaseFile.read("case", CaseTree.soundLeg().bytes(), knowledge);
        Derived alone = derived(new Physics(knowledge), caseFile);
        Physics shared = new Physics(knowledge);
        List<Derived> together = IntStream.range(0, 6)
                .parallel()
                .mapToObj(i -> derived(shared, caseFile))
                .toList();
        together.forEach(derived -> assertEquals(alone, derived));
    }

    private static Derived derived(Physics physics, CaseFile caseFile) {
        return physics.derive(caseFile, caseFile.limbs().get(0).segments().get(0));
    }

    @Test
    void whatATechniqueLacksToBeComputed_isToldAtTheStart() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.put("knowledge/techniques/laser-1471-radial.yaml", """
                id: laser-1471-radial
                says: invented fibre
                family: heat
                needs: []
                """);
        texts.computeIfPresent(
                "knowledge/plain/ways.yaml",
                (path, text) -> text.replace("laser-1470-radial,", "laser-1470-radial, laser-1471-radial,"));
        Knowledge knowledge = Knowledge.of(Bundle.of(texts));
        FaultyInput refused = assertThrows(FaultyInput.class, () -> new Physics(knowledge));
        String file = "knowledge/techniques/laser-1471-radial.yaml: ";
        assertEquals(
                List.of(
                        file + "quantities.tumescentMlPerCm: must be given for the family heat",
                        file + "id: is no device of the heat model; did you mean \"laser-1470-radial\"?"),
                refused.faults().stream().map(Fault::toString).toList());
    }
}
