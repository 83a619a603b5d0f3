package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/**
 * The advice for one segment: every option of every technique, best first.
 *
 * @param nearMisses numbers that lie so close to a limit that a little difference would change how a technique stands;
 *     the gravest and nearest first
 * @param ranking whether the ranking holds
 * @param firmness how firm the ranking is, in numbers; absent until computed
 * @param hardCase signs that colleagues should look at this case together, each with its rule; empty also until the
 *     firmness is computed
 * @param similar past segments like this one, for people to read; absent unless they were asked for
 */
public record SegmentAdvice(
        String ref,
        Limb.Side side,
        Segment.Vein vein,
        Segment.Level level,
        DerivedAdvice derived,
        List<OptionAdvice> options,
        List<NearMissAdvice> nearMisses,
        RankingFirmness ranking,
        Optional<FirmnessAdvice> firmness,
        List<Reason> hardCase,
        Optional<SimilarAdvice> similar) {

    /** The same with other options, and nothing said of how near they lie to a limit. */
    SegmentAdvice withOptions(List<OptionAdvice> others) {
        return new SegmentAdvice(
                ref, side, vein, level, derived, others, List.of(), ranking, firmness, hardCase, similar);
    }

    /** The same with how firm the ranking is. */
    public SegmentAdvice with(List<OptionAdvice> newOptions, RankingFirmness newRanking, FirmnessAdvice newFirmness) {
        return new SegmentAdvice(
                ref,
                side,
                vein,
                level,
                derived,
                newOptions,
                nearMisses,
                newRanking,
                Optional.of(newFirmness),
                hardCase,
                similar);
    }

    /** The same with another account of how firm the ranking is. */
    public SegmentAdvice with(FirmnessAdvice newFirmness) {
        return with(options, ranking, newFirmness);
    }

    /** The same with the signs of a hard case. */
    public SegmentAdvice withHardCase(List<Reason> signs) {
        return new SegmentAdvice(
                ref, side, vein, level, derived, options, nearMisses, ranking, firmness, List.copyOf(signs), similar);
    }

    /** The same with past segments beside it; nothing else of it can change. */
    public SegmentAdvice withSimilar(SimilarAdvice past) {
        return new SegmentAdvice(
                ref, side, vein, level, derived, options, nearMisses, ranking, firmness, hardCase, Optional.of(past));
    }

    /**
     * The computed numbers of the segment, rounded for reading.
     *
     * @param relaxedLumenMm out of spasm, standing
     * @param standingEstimated whether the standing lumen was estimated from a lying one
     * @param bloodless whether the vein will be bloodless with tumescence and head-down
     */
    public record DerivedAdvice(
            OptionalDouble relaxedLumenMm,
            boolean standingEstimated,
            OptionalDouble relaxedWallMm,
            OptionalDouble collapsedWallMm,
            OptionalDouble lumenVolumeMl,
            OptionalDouble wallVolumeMl,
            Optional<Boolean> bloodless) {}
}
