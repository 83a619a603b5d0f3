package org.tunica.plan;

import java.util.List;
import java.util.Set;

/**
 * As much of an advice as is computed. Where the heat of a technique is still awaited, its segment is not ranked, and the
 * technique is left out unless a rule excludes it whatever the heat: what is not known yet is never shown as if it were.
 *
 * @param advice what holds already
 * @param awaited what is still being computed
 */
public record AdviceSoFar(Advice advice, List<Awaited> awaited) {
    public AdviceSoFar {
        awaited = List.copyOf(awaited);
    }

    /**
     * A technique whose heat in a segment is still being computed.
     *
     * @param segmentRef the segment's name in the case
     * @param technique its id
     * @param says the technique in words
     */
    public record Awaited(String segmentRef, String technique, String says) {}

    /** An advice of which nothing is awaited. */
    public static AdviceSoFar whole(Advice advice) {
        return new AdviceSoFar(advice, List.of());
    }

    /** Whether nothing is awaited, not even how firm the rankings are. */
    public boolean isWhole() {
        return awaited.isEmpty()
                && advice.segments().stream()
                        .allMatch(segment -> segment.firmness().isPresent());
    }

    /** What is awaited for a segment. */
    public List<Awaited> awaited(String segmentRef) {
        return awaited.stream()
                .filter(one -> one.segmentRef().equals(segmentRef))
                .toList();
    }

    /** Techniques of a segment judged without some heat that may yet stand elsewhere. */
    static List<Awaited> awaited(SegmentAdvice segment, Set<String> withoutHeat) {
        return segment.options().stream()
                .filter(option -> !stays(option, withoutHeat))
                .map(option -> new Awaited(segment.ref(), option.technique(), option.says()))
                .toList();
    }

    /** What of a segment judged without some heat cannot change any more. */
    static SegmentAdvice certain(SegmentAdvice segment, Set<String> withoutHeat) {
        if (withoutHeat.isEmpty()) {
            return segment;
        }
        List<OptionAdvice> certain = segment.options().stream()
                .filter(option -> stays(option, withoutHeat))
                .map(option -> withoutHeat.contains(option.technique()) ? option.certain() : option)
                .toList();
        return segment.withOptions(
                awaited(segment, withoutHeat).isEmpty()
                        ? certain
                        : certain.stream().map(OptionAdvice::unranked).toList());
    }

    /** A rule that excludes without the heat excludes with it: conditions that hold for certain go on holding. */
    private static boolean stays(OptionAdvice option, Set<String> withoutHeat) {
        return !withoutHeat.contains(option.technique()) || option.standing() == OptionStanding.EXCLUDED;
    }
}
