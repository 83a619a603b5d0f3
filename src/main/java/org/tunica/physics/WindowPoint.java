package org.tunica.physics;

import java.util.List;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatSetting;
import org.tunica.heat.VeinSlice;
import org.tunica.knowledge.Technique;

/**
 * What one power and pull-back do to the wall of one segment. Immutable.
 *
 * @param slice the segment's own wall on the device, with its gaps to nerve and skin before tumescence
 * @param limits what a proposed setting must keep
 * @param powerW highest power accepted
 * @param pullbackSPerCm slowest pull-back accepted
 * @param energyJPerCm largest linear energy accepted
 * @param assumed what is not recorded and how it was taken, in sentences
 * @param run of the heat model with its constants as they stand
 */
public record WindowPoint(
        Segment segment,
        Technique technique,
        VeinSlice slice,
        HeatLimits limits,
        SegmentWindow.Ceiling powerW,
        SegmentWindow.Ceiling pullbackSPerCm,
        SegmentWindow.Ceiling energyJPerCm,
        List<String> assumed,
        HeatRun run) {
    public WindowPoint {
        assumed = List.copyOf(assumed);
    }

    /** What was set. */
    public HeatSetting.Pulled setting() {
        return (HeatSetting.Pulled) run.setting();
    }
}
