package org.tunica.invented;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.Complication;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.FollowUpLimits;

/** Makes up what the scan of each visit saw of one segment: it counts as closed before the day it fails, and not after. */
final class SeenMaker {
    private final FollowUpLimits limits;
    private final Distribution open;
    private final Distribution stump;
    private final Distribution deepShare;
    private final Curve refluxSeconds;
    private final Choice<FollowUp.Again> again;
    private final Troubles troubles;

    SeenMaker(Knowledge knowledge) {
        this.limits = FollowUpLimits.of(knowledge);
        this.open = knowledge.invented("invented.open");
        this.stump = knowledge.invented("invented.stump");
        this.deepShare = knowledge.invented("invented.clot.deep");
        this.refluxSeconds = Curve.of(knowledge.invented("invented.reflux"));
        this.again = Choice.ofWords(knowledge.invented("invented.again"), FollowUp.Again.class);
        this.troubles = new Troubles(knowledge);
    }

    List<FollowUp.Seen> of(Draw draw, Given given, List<Visits.Visit> visits) {
        double stumpCm = stump(draw, given);
        double openCm = open(draw, given);
        double reflux = Made.rounded(refluxSeconds.from(draw), 1);
        FollowUp.Clot clot = troubles.clot(draw, given);
        double deepPercent = Made.rounded(draw.between(deepShare.number("low"), deepShare.number("high")), 0);
        FollowUp.Again later = again.from(draw);
        List<FollowUp.Seen> seen = new ArrayList<>();
        for (int i = 0; i < visits.size(); i++) {
            Visits.Visit visit = visits.get(i);
            boolean failed = visit.day() >= given.failsOnDay();
            boolean last = i == visits.size() - 1;
            FollowUp.Clot here = visit.first() ? clot : FollowUp.Clot.NONE;
            seen.add(new FollowUp.Seen(
                    given.ref(),
                    OptionalDouble.of(failed ? openCm : stumpCm),
                    OptionalDouble.of(failed ? reflux : 0),
                    Optional.of(here),
                    here == FollowUp.Clot.INTO_DEEP_VEIN ? OptionalDouble.of(deepPercent) : OptionalDouble.empty(),
                    Optional.of(complications(draw, given, visit)),
                    Optional.of(failed && last ? later : FollowUp.Again.NONE)));
        }
        return seen;
    }

    private List<Complication> complications(Draw draw, Given given, Visits.Visit visit) {
        return visit.number() > 2 ? List.of() : troubles.seen(draw, given, visit.first());
    }

    /** What may stay open while the segment counts as closed; only a segment at a junction has a stump. */
    private double stump(Draw draw, Given given) {
        double cm = draw.between(stump.number("low"), stump.number("high"));
        boolean atJunction = given.made().segment().vein() != Segment.Vein.PERFORATOR
                && given.made().segment().topToDeepJunctionCm().isPresent();
        double least = given.closure() == ClosureDefinition.MECHANOCHEMICAL_OCCLUDED_SHARE ? 0 : cm;
        return atJunction ? Made.rounded(least, 1) : 0;
    }

    /** So much that the segment does not count as closed. */
    private double open(Draw draw, Given given) {
        double lengthCm = given.treatedLengthCm();
        double wished = Made.rounded(lengthCm * draw.between(open.number("low"), open.number("high")), 1);
        return given.closure().closed(lengthCm, Math.min(wished, lengthCm), limits)
                ? lengthCm
                : Math.min(wished, lengthCm);
    }
}
