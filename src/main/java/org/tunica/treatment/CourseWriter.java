package org.tunica.treatment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.tunica.casefile.Ceap;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Statement;

/** Judges a follow-up by the definitions of trials and the classes of clots. */
final class CourseWriter {
    /** The sentences of knowledge/after-care.yaml it may say. */
    static final Set<String> STATEMENTS = Set.of(
            "clot.class.i",
            "clot.class.ii",
            "clot.class.undefined",
            "clot.class.iii",
            "clot.class.iv",
            "clot.share-missing",
            "clot.not-heat",
            "clot.scan-again",
            "scan.first.heat",
            "scan.first.other",
            "scan.early",
            "scan.year",
            "scan.every");

    private final Knowledge knowledge;
    private final FollowUpLimits limits;

    CourseWriter(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.limits = FollowUpLimits.of(knowledge);
    }

    List<Course.LimbCourse> limbs(List<TreatedSegment> plan, FollowUp followUp) {
        return followUp.limbs().stream().map(limb -> limb(plan, limb)).toList();
    }

    private Course.LimbCourse limb(List<TreatedSegment> plan, FollowUp.FollowedLimb limb) {
        List<Course.SegmentCourse> segments = new ArrayList<>();
        for (FollowUp.TreatedLength treated : limb.treated()) {
            plan.stream()
                    .filter(segment -> segment.ref().equals(treated.ref()))
                    .findFirst()
                    .ifPresent(segment -> segments.add(segment(segment, treated, limb.visits())));
        }
        return new Course.LimbCourse(
                limb.side(),
                limb.ceapBefore().map(Ceap::toString),
                last(limb.visits(), FollowUp.Visit::ceap).map(Ceap::toString),
                severity(limb),
                pain(limb.visits()),
                segments);
    }

    private static List<Course.PainAt> pain(List<FollowUp.Visit> visits) {
        return visits.stream()
                .filter(visit -> visit.painOfTen().isPresent())
                .map(visit ->
                        new Course.PainAt(visit.daysAfter(), visit.painOfTen().getAsInt()))
                .toList();
    }

    private static Course.SeverityChange severity(FollowUp.FollowedLimb limb) {
        Optional<FollowUp.Visit> scored =
                last(limb.visits(), visit -> visit.vcss().map(grades -> visit));
        Optional<ClinicalSeverityScore> before = limb.vcssBefore().flatMap(SeverityGrades::whole);
        Optional<SeverityGrades> grades = scored.flatMap(FollowUp.Visit::vcss);
        Optional<ClinicalSeverityScore> after = grades.flatMap(SeverityGrades::whole);
        return new Course.SeverityChange(
                total(before),
                scored.map(visit -> OptionalInt.of(visit.daysAfter())).orElse(OptionalInt.empty()),
                total(after),
                before.isPresent() && after.isPresent()
                        ? OptionalInt.of(after.get().changeSince(before.get()))
                        : OptionalInt.empty(),
                limb.vcssBefore().map(SeverityGrades::missing).orElse(List.of()),
                grades.map(SeverityGrades::missing).orElse(List.of()));
    }

    private static OptionalInt total(Optional<ClinicalSeverityScore> score) {
        return score.map(one -> OptionalInt.of(one.total())).orElse(OptionalInt.empty());
    }

    /** The latest that was recorded. */
    private static <T> Optional<T> last(List<FollowUp.Visit> visits, Function<FollowUp.Visit, Optional<T>> of) {
        return visits.stream().map(of).flatMap(Optional::stream).reduce((earlier, later) -> later);
    }

    private Course.SegmentCourse segment(
            TreatedSegment segment, FollowUp.TreatedLength treated, List<FollowUp.Visit> visits) {
        List<Course.SeenAt> seen = new ArrayList<>();
        SortedMap<Integer, FollowUp.Seen> byDay = byDay(treated.ref(), visits);
        byDay.forEach((day, one) -> seen.add(seenAt(segment, treated, day, one, seen)));
        ScanPlan.Scan next = next(segment, byDay);
        return new Course.SegmentCourse(segment, treated.treatedLengthCm(), treated.closure(), seen, next);
    }

    /** A segment that was treated again starts its scans anew from that day. */
    private ScanPlan.Scan next(TreatedSegment segment, SortedMap<Integer, FollowUp.Seen> byDay) {
        Optional<Map.Entry<Integer, FollowUp.Seen>> again = byDay.entrySet().stream()
                .filter(entry -> entry.getValue().treatedAgain())
                .reduce((earlier, later) -> later);
        int start = again.map(Map.Entry::getKey).orElse(0);
        Family family = again.flatMap(entry -> entry.getValue().again())
                .map(FollowUp.Again::scannedLike)
                .orElse(segment.family());
        SortedMap<Integer, FollowUp.Seen> since = again.isPresent() ? byDay.tailMap(start + 1) : byDay;
        List<Integer> scanned = since.entrySet().stream()
                .filter(entry -> entry.getValue().scanned())
                .map(entry -> entry.getKey() - start)
                .toList();
        return ScanPlan.of(family, segment.vein(), knowledge)
                .next(scanned, lastClot(byDay).map(day -> day - start), knowledge)
                .laterBy(start);
    }

    private static SortedMap<Integer, FollowUp.Seen> byDay(String ref, List<FollowUp.Visit> visits) {
        SortedMap<Integer, FollowUp.Seen> byDay = new TreeMap<>();
        for (FollowUp.Visit visit : visits) {
            visit.segments().stream()
                    .flatMap(List::stream)
                    .filter(seen -> seen.ref().equals(ref))
                    .forEach(seen -> byDay.put(visit.daysAfter(), seen));
        }
        return byDay;
    }

    /** The day of the last look at the deep end, when it saw a clot inside; a scan that did not look takes nothing back. */
    private static Optional<Integer> lastClot(SortedMap<Integer, FollowUp.Seen> byDay) {
        return byDay.entrySet().stream()
                .filter(entry -> entry.getValue().clot().isPresent())
                .reduce((earlier, later) -> later)
                .filter(entry -> entry.getValue()
                        .clot()
                        .filter(FollowUp.Clot.INTO_DEEP_VEIN::equals)
                        .isPresent())
                .map(Map.Entry::getKey);
    }

    private Course.SeenAt seenAt(
            TreatedSegment segment,
            FollowUp.TreatedLength treated,
            int daysAfter,
            FollowUp.Seen seen,
            List<Course.SeenAt> earlier) {
        return new Course.SeenAt(
                daysAfter,
                state(treated, seen, earlier),
                seen.openLengthCm(),
                reflux(seen),
                seen.refluxSeconds(),
                seen.clot().filter(clot -> clot != FollowUp.Clot.NONE).map(clot -> clot(segment.family(), clot, seen)),
                seen.complications(),
                seen.again());
    }

    private ClosureState state(FollowUp.TreatedLength treated, FollowUp.Seen seen, List<Course.SeenAt> earlier) {
        if (seen.openLengthCm().isEmpty()) {
            return ClosureState.NOT_RECORDED;
        }
        double openCm = seen.openLengthCm().getAsDouble();
        if (treated.closure().closed(treated.treatedLengthCm(), openCm, limits)) {
            return ClosureState.CLOSED;
        }
        boolean wasClosed = earlier.stream().anyMatch(one -> one.state() == ClosureState.CLOSED);
        if (wasClosed && openCm > limits.reopenedOverCm()) {
            return ClosureState.REOPENED;
        }
        return openCm == treated.treatedLengthCm() ? ClosureState.OPEN : ClosureState.PARTLY_OPEN;
    }

    private Course.Reflux reflux(FollowUp.Seen seen) {
        if (seen.refluxSeconds().isEmpty()) {
            return Course.Reflux.NOT_RECORDED;
        }
        return seen.refluxSeconds().getAsDouble() > limits.superficialRefluxOverS()
                ? Course.Reflux.CAME_BACK
                : Course.Reflux.NONE_THAT_COUNTS;
    }

    private Course.ClotFound clot(Family family, FollowUp.Clot clot, FollowUp.Seen seen) {
        Optional<HeatInducedThrombusClass> found = thrombusClass(clot, seen);
        Statement done =
                knowledge.afterCare(found.map(one -> "clot.class." + one.name().toLowerCase(Locale.ROOT))
                        .orElse("clot.share-missing"));
        Optional<Statement> caution =
                family == Family.HEAT ? Optional.empty() : Optional.of(knowledge.afterCare("clot.not-heat"));
        return new Course.ClotFound(found, seen.deepLumenPercent(), done, caution);
    }

    private static Optional<HeatInducedThrombusClass> thrombusClass(FollowUp.Clot clot, FollowUp.Seen seen) {
        if (clot == FollowUp.Clot.UP_TO_JUNCTION) {
            return Optional.of(HeatInducedThrombusClass.I);
        }
        return seen.deepLumenPercent().isPresent()
                ? Optional.of(
                        HeatInducedThrombusClass.of(seen.deepLumenPercent().getAsDouble()))
                : Optional.empty();
    }

    /** Closed at the last scan that told, of those that have one, by each definition used. */
    static List<Course.ClosedShare> closed(List<Course.LimbCourse> limbs) {
        Map<ClosureDefinition, List<Course.SegmentCourse>> byDefinition = new EnumMap<>(ClosureDefinition.class);
        limbs.stream()
                .flatMap(limb -> limb.segments().stream())
                .forEach(segment -> byDefinition
                        .computeIfAbsent(segment.closure(), definition -> new ArrayList<>())
                        .add(segment));
        List<Course.ClosedShare> shares = new ArrayList<>();
        byDefinition.forEach((definition, segments) -> {
            List<ClosureState> last = segments.stream()
                    .map(CourseWriter::lastState)
                    .filter(state -> state != ClosureState.NOT_RECORDED)
                    .toList();
            if (!last.isEmpty()) {
                int closed =
                        (int) last.stream().filter(ClosureState.CLOSED::equals).count();
                shares.add(new Course.ClosedShare(definition, new Proportion(closed, last.size()), segments.size()));
            }
        });
        return shares;
    }

    private static ClosureState lastState(Course.SegmentCourse segment) {
        ClosureState last = ClosureState.NOT_RECORDED;
        for (Course.SeenAt seen : segment.visits()) {
            last = seen.state() == ClosureState.NOT_RECORDED ? last : seen.state();
        }
        return last;
    }
}
