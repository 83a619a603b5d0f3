package org.tunica.meeting;

import java.util.List;
import java.util.Optional;
import org.tunica.frame.Frame;

/**
 * A case and the meeting: sending it, and what was decided.
 *
 * @param signs of a hard case, by the rules
 * @param waiting id under which it waits; absent when it does not
 * @param reasons why a person sends it
 * @param question as typed
 * @param date as typed
 * @param decisions what was decided, the last one first
 */
public record ReferPage(
        Frame frame,
        String caseRef,
        List<String> signs,
        Optional<String> waiting,
        List<Choice> reasons,
        String question,
        String date,
        List<DecisionText> decisions,
        List<String> faults) {
    /** A decision in sentences. */
    public record DecisionText(String title, List<String> lines) {}

    public ReferPage {
        signs = List.copyOf(signs);
        reasons = List.copyOf(reasons);
        decisions = List.copyOf(decisions);
        faults = List.copyOf(faults);
    }
}
