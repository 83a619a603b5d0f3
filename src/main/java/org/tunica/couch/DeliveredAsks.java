package org.tunica.couch;

import java.util.List;
import java.util.Set;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/**
 * What the form of a delivered session asks, read off the records of its contract.
 *
 * @param head of the session
 * @param segment of each segment, whatever the technique
 */
record DeliveredAsks(List<Ask> head, List<Ask> segment) {
    private static final Set<String> KNOWN = Set.of("caseRef", "session", "ref");
    private static final Set<String> RARE_OF_SESSION = Set.of("severityPoints", "otherLidocaineMg", "otherAdrenaline");

    static DeliveredAsks of(Knowledge knowledge) {
        AskReader reading = new AskReader(new AskWords(knowledge), Set.of(DeliveredSegment.class), Set.of());
        return new DeliveredAsks(
                reading.asks(DeliveredSession.class, "delivered.").stream()
                        .filter(ask -> !KNOWN.contains(ask.field()))
                        .map(ask ->
                                ask.rare(ask.field().startsWith("totals.") || RARE_OF_SESSION.contains(ask.field())))
                        .toList(),
                reading.asks(DeliveredSegment.class, "delivered.segments.").stream()
                        .filter(ask -> !KNOWN.contains(ask.field()))
                        .toList());
    }

    /** What is asked of a segment for which a technique of a family was intended; the rest is folded away. */
    List<Ask> segment(Family intended) {
        return segment.stream()
                .map(ask -> ask.rare(!usual(ask.field(), intended)))
                .toList();
    }

    private static boolean usual(String field, Family intended) {
        String part = field.contains(".") ? field.substring(0, field.indexOf('.')) : field;
        return switch (part) {
            case "heat" ->
                intended == Family.HEAT && !field.equals("heat.lengthCm") && !field.equals("heat.pullbackMmPerS");
            case "sclerosant" -> intended == Family.FOAM || intended == Family.MECHANOCHEMICAL;
            case "adhesive" -> intended == Family.ADHESIVE;
            case "lesions" -> intended == Family.FOCUSED_ULTRASOUND;
            case "tumescent" -> intended == Family.HEAT || intended == Family.FOCUSED_ULTRASOUND;
            case "stretches", "phlebectomyIncisions", "incidentNote" -> false;
            default -> true;
        };
    }
}
