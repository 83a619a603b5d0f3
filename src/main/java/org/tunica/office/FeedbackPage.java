package org.tunica.office;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;

/**
 * What people did with cards, and what was found of it later.
 *
 * @param mayJudge whether the reader may say what they find
 * @param faults why a finding was not kept
 * @param typed what was typed then
 */
public record FeedbackPage(
        Frame frame, boolean mayJudge, List<Line> lines, List<String> faults, Optional<Typed> typed) {

    /** What somebody typed about a card. */
    public record Typed(String card, String found, String because) {}

    /**
     * A report.
     *
     * @param reason as it was given: its code, never its words
     * @param technique in words; not recorded when nothing of the card was kept
     * @param findings who found what, why and when
     */
    public record Line(
            String card,
            String outcome,
            String at,
            String reason,
            String technique,
            List<String> rules,
            List<String> findings) {
        /** What was typed about this card before, or nothing. */
        public String because(Optional<Typed> typed) {
            return typed.filter(one -> one.card().equals(card))
                    .map(Typed::because)
                    .orElse("");
        }
    }
}
