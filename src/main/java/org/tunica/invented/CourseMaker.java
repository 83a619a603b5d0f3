package org.tunica.invented;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.NamedVein;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.SeverityGrades;

/** Makes up how it went: visits, what the scan saw at each, complications, scores. */
final class CourseMaker {
    private final Visits visits;
    private final SeenMaker seen;
    private final Severity severity;
    private final Map<Family, Curve> pains = new EnumMap<>(Family.class);
    private final double painUnrecordedShare;

    CourseMaker(Knowledge knowledge) {
        this.visits = new Visits(knowledge);
        this.seen = new SeenMaker(knowledge);
        this.severity = new Severity(knowledge);
        for (Family family : Family.values()) {
            pains.put(family, Curve.of(knowledge.invented("invented.pain." + family.word())));
        }
        this.painUnrecordedShare = knowledge.invented("invented.unrecorded").number("pain");
    }

    FollowUp of(Draw draw, String caseRef, List<MadeLeg> legs, List<Given> given) {
        List<Visits.Visit> kept = visits.from(draw);
        List<FollowUp.FollowedLimb> limbs = new ArrayList<>();
        for (MadeLeg leg : legs) {
            List<Given> here =
                    given.stream().filter(one -> one.side() == leg.side()).toList();
            if (!here.isEmpty()) {
                limbs.add(limb(draw, leg, here, kept));
            }
        }
        return new FollowUp(caseRef, limbs);
    }

    private FollowUp.FollowedLimb limb(Draw draw, MadeLeg leg, List<Given> given, List<Visits.Visit> kept) {
        Optional<int[]> before = severity.before(draw, leg.ceapClass());
        List<List<FollowUp.Seen>> scans = new ArrayList<>();
        given.forEach(one -> scans.add(seen.of(draw, one, kept)));
        List<FollowUp.Visit> made = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            int at = i;
            List<FollowUp.Seen> now = scans.stream().map(scan -> scan.get(at)).toList();
            made.add(visit(draw, kept.get(i), given, now, before));
        }
        return new FollowUp.FollowedLimb(
                leg.side(),
                Optional.of(ceap(leg)),
                before.map(Severity::grades),
                given.stream()
                        .map(one -> new FollowUp.TreatedLength(one.ref(), one.treatedLengthCm(), one.closure()))
                        .toList(),
                made);
    }

    private FollowUp.Visit visit(
            Draw draw, Visits.Visit visit, List<Given> given, List<FollowUp.Seen> now, Optional<int[]> before) {
        boolean allClosed = given.stream().allMatch(one -> visit.day() < one.failsOnDay());
        Optional<SeverityGrades> later = visit.first()
                ? Optional.empty()
                : before.map(grades -> Severity.grades(Severity.later(draw, grades, allClosed)));
        return new FollowUp.Visit(visit.day(), pain(draw, visit, given), Optional.empty(), later, Optional.of(now));
    }

    private OptionalInt pain(Draw draw, Visits.Visit visit, List<Given> given) {
        int points = (int) Math.rint(pains.get(given.get(0).family()).from(draw));
        boolean recorded = visit.first() && !draw.happens(painUnrecordedShare);
        return recorded ? OptionalInt.of(points) : OptionalInt.empty();
    }

    private static Ceap ceap(MadeLeg leg) {
        Set<NamedVein> superficial = EnumSet.noneOf(NamedVein.class);
        Map<Ceap.Site, Set<NamedVein>> anatomy = new EnumMap<>(Ceap.Site.class);
        for (MadeSegment segment : leg.segments()) {
            if (segment.segment().vein() == Segment.Vein.PERFORATOR) {
                boolean thigh = segment.segment().level() == Segment.Level.THIGH;
                anatomy.computeIfAbsent(Ceap.Site.PERFORATING, site -> EnumSet.noneOf(NamedVein.class))
                        .add(thigh ? NamedVein.THIGH_PERFORATING : NamedVein.CALF_PERFORATING);
            } else {
                superficial.add(named(segment.segment()));
            }
        }
        if (!superficial.isEmpty()) {
            anatomy.put(Ceap.Site.SUPERFICIAL, superficial);
        }
        return new Ceap(
                Set.of(leg.ceapClass()),
                Optional.of(Ceap.Symptoms.SYMPTOMATIC),
                Set.of(Ceap.Cause.PRIMARY),
                anatomy,
                Set.of(Ceap.Flow.REFLUX));
    }

    private static NamedVein named(Segment segment) {
        return switch (segment.vein()) {
            case GREAT_SAPHENOUS ->
                Ways.belowKnee(segment.vein(), segment.level())
                        ? NamedVein.GREAT_SAPHENOUS_BELOW_KNEE
                        : NamedVein.GREAT_SAPHENOUS_ABOVE_KNEE;
            case SMALL_SAPHENOUS -> NamedVein.SMALL_SAPHENOUS;
            case ANTERIOR_ACCESSORY -> NamedVein.ANTERIOR_ACCESSORY;
            case POSTERIOR_ACCESSORY, THIGH_EXTENSION, TRIBUTARY, PERFORATOR, RECURRENT_CHANNEL ->
                NamedVein.NON_SAPHENOUS;
        };
    }
}
