package org.tunica.meeting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A decision in sentences. */
final class DecisionWords {
    private DecisionWords() {}

    /** As it was entered, for the case. */
    static List<String> ofCase(Decision decision) {
        return lines(decision, Decision.ForSegment::ref, UnaryOperator.identity());
    }

    /** Beside a packet: segments by their names there, and words only as far as they name nobody. */
    static List<String> ofPacket(Decision decision, UnaryOperator<String> scrubbed) {
        return lines(decision, Decision.ForSegment::shownAs, scrubbed);
    }

    private static List<String> lines(
            Decision decision, Function<Decision.ForSegment, String> name, UnaryOperator<String> words) {
        List<String> lines = new ArrayList<>();
        decision.segments().forEach(one -> lines.add(segment(one, name.apply(one), words)));
        lines.add("Agreed: " + String.join(", ", decision.agreed()) + ".");
        if (decision.dissent().isEmpty()) {
            lines.add("Nobody dissented.");
        }
        decision.dissent().forEach(one -> lines.add("DISSENT of " + one.who() + ": " + words.apply(one.says())));
        lines.add("Seen to by " + decision.owner()
                + decision.due().map(day -> ", by " + day).orElse(", no day set") + ".");
        return lines;
    }

    private static String segment(Decision.ForSegment one, String name, UnaryOperator<String> words) {
        String first =
                one.firstInRank().isEmpty() ? "nothing could be ranked" : "first in rank was " + one.firstInRank();
        String why = one.why() == Decision.Why.FIRST_IN_RANK
                ? ""
                : "; " + first + "; " + one.why().word().replace('-', ' ');
        return name + ": " + one.says() + why
                + (one.reason().isEmpty() ? "" : ". Reason: " + words.apply(one.reason()));
    }
}
