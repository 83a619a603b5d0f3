package org.tunica.meeting;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;
import org.tunica.store.Actor;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Store;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Tells governance of a decision: for each segment, what the rules had first and whether it was taken. Of the words only the
 * one picked from a list is told; nothing of the case.
 *
 * @param advice that was looked at, its segments under the names of the packet
 */
record HeardOf(Advice advice) {
    private static final String SERVICE = "meeting";
    private static final String ACCEPTED = "accepted";
    private static final String OVERRIDDEN = "overridden";

    void tell(Store store, Actor by, Decision decision, Instant at) {
        Map<String, SegmentAdvice> advised = new HashMap<>();
        advice.segments().forEach(segment -> advised.put(segment.ref(), segment));
        for (Decision.ForSegment one : decision.segments()) {
            OptionAdvice first = advised.get(one.shownAs()).options().get(0);
            if (!first.standing().ranked()) {
                continue; // the rules had nothing first that could be taken or not
            }
            String card = decision.meetingId() + "-" + one.shownAs();
            store.cards()
                    .keep(
                            by,
                            new GivenCard(
                                    card,
                                    SERVICE,
                                    advice.release().version(),
                                    advice.release().digest(),
                                    first.technique(),
                                    first.standing().word(),
                                    rules(first)));
            boolean taken = one.technique().filter(first.technique()::equals).isPresent();
            String outcome = taken ? ACCEPTED : OVERRIDDEN;
            store.feedback().keep(by, new HookFeedback(SERVICE, card, outcome, at, body(card, outcome, one, at)));
        }
    }

    private static Set<String> rules(OptionAdvice option) {
        Set<String> rules = new TreeSet<>();
        Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(reasons -> reasons.stream().map(Reason::rule))
                .forEach(rules::add);
        return rules;
    }

    private static String body(String card, String outcome, Decision.ForSegment one, Instant at) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ObjectNode entry = root.putArray("feedback").addObject();
        entry.put("card", card).put("outcome", outcome);
        if (outcome.equals(OVERRIDDEN)) {
            entry.putObject("overrideReason")
                    .putObject("reason")
                    .put("code", one.why().word());
        }
        entry.put("outcomeTimestamp", at.toString());
        return root.toString();
    }
}
