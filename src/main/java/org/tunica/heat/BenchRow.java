package org.tunica.heat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One stretch of vein treated on the bench and cut open afterwards.
 *
 * @param line where it stands in its file
 * @param setting what was set on the device
 * @param slice wall on the device and tumescence
 * @param killed depth of immediate death from the inner face, when it was measured
 * @param delayed depth of delayed death, immediate death included, when it was measured
 * @param charSeen whether char was seen, when somebody looked
 */
public record BenchRow(
        int line,
        HeatSetting setting,
        VeinSlice slice,
        Optional<Depth> killed,
        Optional<Depth> delayed,
        Optional<Boolean> charSeen) {

    /**
     * One depth measured.
     *
     * @param depthMm from the inner face; the wall thickness when the whole wall was dead
     * @param sdMm standard deviation of the measurement, when it was given
     */
    public record Depth(double depthMm, OptionalDouble sdMm) {}

    /** What a depth is the depth of. */
    public enum Kind {
        /** Immediate death. */
        KILLED,
        /** Delayed death, immediate death included. */
        DELAYED
    }

    /**
     * One measured depth against a computed one.
     *
     * @param mm computed less measured; 0 where the whole wall was dead and is computed to be, as the measurement says
     *     only "at least"
     */
    public record Off(Kind kind, Depth depth, double computedMm, double mm) {
        /** Off in standard deviations, or in mm when none is given. */
        public double weighed() {
            return mm / depth.sdMm().orElse(1);
        }
    }

    /** The depths measured, immediate death first. */
    Stream<Depth> depths() {
        return Stream.concat(killed.stream(), delayed.stream());
    }

    /** Whether a depth reached the outer face, so that it tells no more than "at least". */
    public boolean wholeWall(Depth depth) {
        return depth.depthMm() >= slice.wallMm();
    }

    /** Every measured depth with what a run says about it, immediate death first. */
    public List<Off> offs(HeatRun run) {
        return Stream.concat(
                        killed.stream().map(depth -> off(Kind.KILLED, depth, run.killDepthMm())),
                        delayed.stream().map(depth -> off(Kind.DELAYED, depth, run.delayedDepthMm())))
                .toList();
    }

    private Off off(Kind kind, Depth depth, double computedMm) {
        double mm = computedMm - depth.depthMm();
        return new Off(kind, depth, computedMm, wholeWall(depth) ? Math.min(0, mm) : mm);
    }

    /** Whether two rows had the same setting on the same slice. */
    boolean sameConditions(BenchRow other) {
        return setting.equals(other.setting) && slice.equals(other.slice);
    }
}
