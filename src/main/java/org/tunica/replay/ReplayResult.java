package org.tunica.replay;

import java.util.List;
import java.util.Optional;
import org.tunica.plan.Advice;

/**
 * What two releases would advise otherwise over many cases, the record behind {@code tunica-replay/1}. The same releases and
 * cases give the same bytes, however many threads were at work and however often the program was ended in between.
 *
 * @param against the release the draft is held against
 * @param draft the other release
 * @param cases what was replayed
 * @param changedCasesCount cases with at least one segment that comes out otherwise
 * @param kinds how many segments show which kind of change
 * @param gravities how many segments are how grave, the worst first
 * @param causes which rules turned, the worst first, then by the number of segments
 * @param worst the gravest segments, at most {@link #MOST_LISTED}
 * @param unreadableCount cases the draft cannot read
 * @param unreadable the first of them, at most {@link #MOST_LISTED}
 * @param notCompared what the comparison leaves out
 * @param digest over this record as JSON on one line without this component; who acknowledges a replay names it
 */
public record ReplayResult(
        String format,
        String caution,
        Advice.Release against,
        Advice.Release draft,
        Replayed cases,
        int changedCasesCount,
        int changedSegmentsCount,
        int unchangedSegmentsCount,
        List<KindCount> kinds,
        List<GravityCount> gravities,
        List<Cause> causes,
        List<ReplayedSegment> worst,
        int unreadableCount,
        List<Unreadable> unreadable,
        List<String> notCompared,
        Optional<String> digest) {
    /** The word a result carries under {@code format}. */
    public static final String FORMAT = "tunica-replay/1";

    /** The most segments listed by name. */
    public static final int MOST_LISTED = 200;

    static final List<String> NOT_COMPARED = List.of(
            "points, unless another technique leads for them",
            "near misses",
            "how firm the ranking is, and the signs of a hard case that rest on it",
            "the plan of the session");

    public ReplayResult {
        kinds = List.copyOf(kinds);
        gravities = List.copyOf(gravities);
        causes = List.copyOf(causes);
        worst = List.copyOf(worst);
        unreadable = List.copyOf(unreadable);
        notCompared = List.copyOf(notCompared);
    }

    /**
     * What was replayed.
     *
     * @param says in words, one line a source
     * @param invented whether cases of people who never were are among them
     * @param casesCount cases both releases can read
     * @param segmentsCount their segments
     * @param checkedCount cases that the rule engine judged again, to hold the replay against it
     * @param digest of everything the cases were read from, in order
     */
    public record Replayed(
            List<String> says, boolean invented, int casesCount, int segmentsCount, int checkedCount, String digest) {
        public Replayed {
            says = List.copyOf(says);
        }
    }

    /** Whether nothing comes out otherwise. */
    public boolean same() {
        return changedSegmentsCount == 0 && unreadableCount == 0;
    }

    /** The same with its digest. */
    ReplayResult sealedWith(String newDigest) {
        return new ReplayResult(
                format,
                caution,
                against,
                draft,
                cases,
                changedCasesCount,
                changedSegmentsCount,
                unchangedSegmentsCount,
                kinds,
                gravities,
                causes,
                worst,
                unreadableCount,
                unreadable,
                notCompared,
                Optional.of(newDigest));
    }
}
