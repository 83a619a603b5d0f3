package org.tunica.heat;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What one setting does to one slice. Indices for a physician, not validated on patients.
 *
 * @param setting what was set
 * @param wallMm wall thickness the depths are held against
 * @param killDepthMm depth of immediate heat death from the inner face; may go beyond the wall
 * @param delayedDepthMm depth of delayed death, immediate death included
 * @param dryDepthMm wall thickness dried
 * @param innerWallDryness share of water lost in the inner layer of the wall
 * @param charIndex charring starts at 1; higher values are not graded
 * @param perforationIndex perforation is feared at 1; a drying index only
 * @param innerWallPeakC highest temperature of the innermost wall; a shell that dries overshoots for one step, by some ten
 *     degrees
 * @param outerWallPeakC highest temperature of the outermost wall
 * @param nerve how warm the nerve gets, when the slice has one
 * @param skin how warm the skin gets, when the slice has one
 * @param energy where the energy went; with a leaning tip that of the near side
 * @param flags why to trust it less
 */
public record HeatRun(
        HeatSetting setting,
        double wallMm,
        double killDepthMm,
        double delayedDepthMm,
        double dryDepthMm,
        double innerWallDryness,
        double charIndex,
        double perforationIndex,
        double innerWallPeakC,
        double outerWallPeakC,
        Optional<WarmedPoint> nerve,
        Optional<WarmedPoint> skin,
        EnergyBook energy,
        Set<HeatFlag> flags) {

    public HeatRun {
        flags = Set.copyOf(flags);
    }

    /** Share of the wall dead at once, at most 1. */
    public double wallFractionKilled() {
        return Math.min(1, killDepthPerWall());
    }

    /** Share of the wall dead at once or later, at most 1. */
    public double wallFractionDelayed() {
        return Math.min(1, delayedDepthMm / wallMm);
    }

    /** Depth of immediate death in walls; above 1 it goes beyond the wall. */
    public double killDepthPerWall() {
        return killDepthMm / wallMm;
    }

    /** Whether charring has started. */
    public boolean chars() {
        return charIndex >= 1;
    }

    /**
     * A leaning tip: closure counts on the far side, which is this one; char, perforation and warmth on the near side.
     */
    HeatRun leaningOn(HeatRun near) {
        Set<HeatFlag> both = EnumSet.noneOf(HeatFlag.class);
        both.addAll(flags);
        both.addAll(near.flags);
        return new HeatRun(
                setting,
                wallMm,
                killDepthMm,
                delayedDepthMm,
                near.dryDepthMm,
                near.innerWallDryness,
                near.charIndex,
                near.perforationIndex,
                near.innerWallPeakC,
                near.outerWallPeakC,
                nerve.map(point -> point.worse(near.nerve.orElseThrow())),
                skin.map(point -> point.worse(near.skin.orElseThrow())),
                near.energy,
                both);
    }
}
