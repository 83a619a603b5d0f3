package org.tunica.physics;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.heat.HeatLimits;
import org.tunica.heat.HeatRun;
import org.tunica.heat.HeatWindow;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.VeinSlice;
import org.tunica.knowledge.Technique;

/**
 * What the settings of a heat device do to the wall of one segment. Immutable.
 *
 * @param segment the segment
 * @param technique the technique whose device it is
 * @param slice the segment's own wall on the device, with its gaps to nerve and skin before tumescence
 * @param limits the lines of the map
 * @param tipLeans whether the tip leans on one side, so that closure counts on the far side and harm on the near side
 * @param powerW highest power accepted
 * @param pullbackSPerCm slowest pull-back accepted
 * @param energyJPerCm largest linear energy accepted
 * @param assumed what is not recorded and how it was taken, in sentences
 * @param map power by pull-back; empty for a device that is not drawn back, and in an outline
 * @param repeats one run for each number of cycles or pulses; empty for a device that is drawn back
 * @param proposed the setting the advice gives; empty when something it rests on is not recorded, or when the advice does
 *     not rank the technique
 * @param standing how the technique stands in the advice, in a sentence; empty when nobody asked the rules
 */
public record SegmentWindow(
        Segment segment,
        Technique technique,
        VeinSlice slice,
        HeatLimits limits,
        boolean tipLeans,
        Ceiling powerW,
        Ceiling pullbackSPerCm,
        Ceiling energyJPerCm,
        List<String> assumed,
        Optional<HeatWindow> map,
        List<HeatRun> repeats,
        Optional<ProposedSetting> proposed,
        Optional<String> standing) {

    public SegmentWindow {
        assumed = List.copyOf(assumed);
        repeats = List.copyOf(repeats);
    }

    /** The same window with its map. */
    SegmentWindow with(HeatWindow computed) {
        return new SegmentWindow(
                segment,
                technique,
                slice,
                limits,
                tipLeans,
                powerW,
                pullbackSPerCm,
                energyJPerCm,
                assumed,
                Optional.of(computed),
                repeats,
                proposed,
                standing);
    }

    /**
     * The same window with what the rules say of the technique; a setting is proposed only where they let it be used.
     *
     * @param says how the technique stands, in a sentence
     * @param ranked whether the advice ranks it
     */
    public SegmentWindow standing(String says, boolean ranked) {
        return new SegmentWindow(
                segment,
                technique,
                slice,
                limits,
                tipLeans,
                powerW,
                pullbackSPerCm,
                energyJPerCm,
                assumed,
                map,
                repeats,
                ranked ? proposed : Optional.empty(),
                Optional.of(says));
    }

    /**
     * A largest value accepted.
     *
     * @param value in the unit of the setting
     * @param origin the source it comes from, in words
     */
    public record Ceiling(double value, String origin) {}
}
