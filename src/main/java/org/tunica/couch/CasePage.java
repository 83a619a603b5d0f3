package org.tunica.couch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.frame.Frame;
import org.tunica.pages.AdviceView;
import org.tunica.plan.AdviceSoFar;

/**
 * The advice for a kept case.
 *
 * @param line which version it is of
 * @param mayWrite whether the reader may change the case
 * @param whole whether everything is computed
 * @param awaited what is still computed
 * @param papers what is kept with it
 * @param choices what can be chosen and was, by the name of the segment
 */
public record CasePage(
        Frame frame,
        CaseLine line,
        boolean mayWrite,
        AdviceView advice,
        boolean whole,
        List<AdviceSoFar.Awaited> awaited,
        CasePapers papers,
        Map<String, ChoiceForm> choices) {
    public CasePage {
        awaited = List.copyOf(awaited);
        choices = Map.copyOf(choices);
    }

    /** Techniques of a segment that are still computed, in words. */
    public List<String> awaited(String segment) {
        return awaited.stream()
                .filter(one -> one.segmentRef().equals(segment))
                .map(AdviceSoFar.Awaited::says)
                .toList();
    }

    /** What can be chosen for a segment. */
    public Optional<ChoiceForm> choice(String segment) {
        return Optional.ofNullable(choices.get(segment));
    }
}
