package org.tunica.watching;

import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Word;

/**
 * What somebody did with a card.
 *
 * @param rules ids of the rules the card rested on; empty when that was not kept
 * @param technique id of the technique it was about
 * @param reason why it was set aside, as it was given
 * @param found what somebody found who looked later
 */
public record Answered(
        Set<String> rules, Optional<String> technique, Answer answer, Optional<String> reason, Optional<Found> found) {
    public Answered {
        rules = Set.copyOf(rules);
    }

    /** What can be done with a card. */
    public enum Answer implements Word {
        ACCEPTED,
        OVERRIDDEN
    }

    /** Whether it was right to do so. */
    public enum Found implements Word {
        APPROPRIATE,
        NOT_APPROPRIATE,
        CANNOT_TELL
    }
}
