package org.tunica.store;

import java.time.Instant;
import org.tunica.casefile.Word;

/**
 * Whether somebody who looked later finds right what was done with a card.
 *
 * @param card id of the card
 * @param outcome the word that was reported
 * @param outcomeAt when it came to that, as reported
 * @param found what was found
 * @param judge user name
 * @param reason in words of the judge; not empty, nothing that names a patient
 */
public record Judgement(String card, String outcome, Instant outcomeAt, Finding found, String judge, String reason) {
    /** What can be found. */
    public enum Finding implements Word {
        /** The person did right. */
        APPROPRIATE,
        NOT_APPROPRIATE,
        CANNOT_TELL
    }
}
