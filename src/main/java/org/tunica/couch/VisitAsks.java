package org.tunica.couch;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.casefile.Ceap;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.FollowUp;

/**
 * What the form of a visit after a closure asks, read off the records of its contract.
 *
 * @param head of the visit
 * @param limb of each leg
 * @param segment of each segment treated
 */
record VisitAsks(List<Ask> head, List<Ask> limb, List<Ask> segment) {
    private static final String DAY = "daysAfter";
    private static final String VISITS = "followup.limbs.visits.";

    static VisitAsks of(Knowledge knowledge) {
        AskReader reading = new AskReader(new AskWords(knowledge), Set.of(FollowUp.Seen.class), Set.of(Ceap.class));
        List<Ask> visit = reading.asks(FollowUp.Visit.class, VISITS);
        return new VisitAsks(
                visit.stream().filter(ask -> ask.field().equals(DAY)).toList(),
                visit.stream()
                        .filter(ask -> !ask.field().equals(DAY))
                        .map(ask -> ask.rare(ask.field().startsWith("vcss.")))
                        .toList(),
                Stream.concat(
                                reading.asks(FollowUp.TreatedLength.class, "followup.limbs.treated.").stream(),
                                reading.asks(FollowUp.Seen.class, VISITS + "segments.").stream())
                        .filter(ask -> !ask.field().equals("ref"))
                        .toList());
    }
}
