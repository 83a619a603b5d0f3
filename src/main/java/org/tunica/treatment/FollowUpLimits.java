package org.tunica.treatment;

import java.util.List;
import org.tunica.knowledge.Knowledge;

/**
 * The thresholds of follow-up; each is a quantity of knowledge/ with source and standing.
 *
 * @param adhesiveOpenStumpMaxCm longest open stump after adhesive, cm
 * @param mechanochemicalOpenPartMaxCm longest open part after mechanochemical closure, cm
 * @param mechanochemicalOccludedShareMin least share of the length occluded after it, 0 to 1
 * @param heatOpenPartMaxCm longest open part after heat, cm
 * @param heatNoFlowMaxCm open length after heat where no flow may be left, cm
 * @param superficialRefluxOverS reflux of a superficial vein counts above this, s
 * @param reopenedAt1940NmUpToJPerCm veins reopened at up to this linear energy at 1940 nm, J/cm
 * @param reopenedOverCm a vein that was closed counts as reopened when more than this is open, cm
 */
public record FollowUpLimits(
        double adhesiveOpenStumpMaxCm,
        double mechanochemicalOpenPartMaxCm,
        double mechanochemicalOccludedShareMin,
        double heatOpenPartMaxCm,
        double heatNoFlowMaxCm,
        double superficialRefluxOverS,
        double reopenedAt1940NmUpToJPerCm,
        double reopenedOverCm) {

    /** The ids in knowledge/, in the order of the components. */
    public static final List<String> IDS = List.of(
            "follow-up.adhesive.open-stump.max",
            "follow-up.mechanochemical.open-part.max",
            "follow-up.mechanochemical.occluded-share.min",
            "follow-up.heat.open-part.max",
            "follow-up.heat.no-flow.max",
            "reflux.superficial.over",
            "follow-up.laser-1940.energy.reopened-up-to",
            "follow-up.reopened.over");

    /** The limits of a release. */
    public static FollowUpLimits of(Knowledge knowledge) {
        double[] v = IDS.stream().mapToDouble(knowledge::value).toArray();
        return new FollowUpLimits(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]);
    }
}
