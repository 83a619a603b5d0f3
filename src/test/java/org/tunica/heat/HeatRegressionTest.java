package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Figures of the reference model at the calibrated steps: wall 0.65 mm, tumescence 8 mm at 27 C. */
class HeatRegressionTest {
    private static final double[] GAPS_MM = {1, 2, 5};

    private final HeatModel model = HeatModel.of(HeatKnowledge.constants());

    @Test
    void everyRowOfTheReferenceModel() {
        List<String> faults = new ArrayList<>();
        int rows = 0;
        for (ReferenceRow row : ReferenceRow.all()) {
            check(row, faults);
            rows++;
        }
        assertTrue(faults.isEmpty(), String.join("\n", faults));
        assertEquals(26, rows);
    }

    private void check(ReferenceRow row, List<String> faults) {
        VeinSlice slice = VeinSlice.of(0.65, 8, 27);
        HeatRun run =
                model.run(row.setting(), slice.withNerveGapMm(GAPS_MM[0]).withSkinGapMm(GAPS_MM[1]), row.contact());
        HeatRun far = model.run(row.setting(), slice.withNerveGapMm(GAPS_MM[2]), row.contact());
        row.compare("nec_mm", run.killDepthMm(), 0.001, faults);
        row.compare("delayed_mm", run.delayedDepthMm(), 0.001, faults);
        row.compare("dry_mm", run.dryDepthMm(), 0.0006, faults);
        row.compare("dry_inner_0.1mm", run.innerWallDryness(), 0.006, faults);
        row.compare("char_index", run.charIndex(), 0.006, faults);
        row.compare("perf_index", run.perforationIndex(), 0.0015, faults);
        row.compare("Tmax_outer_wall", run.outerWallPeakC(), 0.1, faults);
        row.compare("T1mm", run.nerve().orElseThrow().peakC(), 0.1, faults);
        row.compare("T2mm", run.skin().orElseThrow().peakC(), 0.1, faults);
        row.compare("T5mm", far.nerve().orElseThrow().peakC(), 0.1, faults);
        // Doubles with every degree, so it shows the rounding of steps most (steam and segmental rows 2 to 4 %).
        row.compare("CEM43_1mm", run.nerve().orElseThrow().cem43Min(), 0.04 * row.number("CEM43_1mm") + 1e-3, faults);
        compareEnergy(row, run.energy(), faults);
    }

    private void compareEnergy(ReferenceRow row, EnergyBook book, List<String> faults) {
        row.compare("E_source_J_per_cm", book.sourceJPerCm(), 0.02, faults);
        row.compare("E_condensed", book.condensedJPerCm(), 0.18, faults);
        row.compare("E_steam", book.steamJPerCm(), 0.12, faults);
        row.compare("E_sens_steam", book.steamSensibleJPerCm(), 0.02, faults);
        row.compare("E_cap", book.removedJPerCm(), 0.02, faults);
        row.compare("E_outflow", book.outflowJPerCm(), 0.06, faults);
        row.compare("E_perf", book.perfusionJPerCm(), 0.02, faults);
        row.compare("dH", book.storedJPerCm(), 0.02, faults);
        row.compare("E_not_delivered", book.undeliveredJPerCm(), 0.02, faults);
    }
}
