package org.tunica.plan;

import java.util.List;
import java.util.Locale;
import org.tunica.casefile.Word;

/**
 * The advice for a case, the record behind {@code tunica-advice/1}.
 *
 * @param seed of every draw, so that the advice can be repeated
 */
public record Advice(
        String format, String caseRef, Release release, long seed, String caution, List<SegmentAdvice> segments) {
    /** The word an advice carries under {@code format}. */
    public static final String FORMAT = "tunica-advice/1";

    /** What every output says. */
    public static final String CAUTION = "Decision support only; the licensed specialist decides."
            + " The device's instructions and the local protocol come first."
            + " Not for use on patients without local validation.";

    /**
     * The rules and knowledge behind the advice.
     *
     * @param digest over every file of the release
     */
    public record Release(String version, State state, String digest) {
        /** What every page of it is marked with: DRAFT, or nothing when it is signed and in force. */
        public String mark() {
            return state == State.ACTIVE ? "" : state.word().toUpperCase(Locale.ROOT);
        }

        /** The same rules, of which nobody vouches that they were signed. */
        public Release asDraft() {
            return new Release(version, State.DRAFT, digest);
        }

        /** Where a release stands; only an active one is signed. */
        public enum State implements Word {
            DRAFT,
            ACTIVE,
            RETIRED
        }
    }
}
