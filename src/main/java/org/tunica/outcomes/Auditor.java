package org.tunica.outcomes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.knowledge.Knowledge;
import org.tunica.paper.Document;
import org.tunica.pastcases.EachCase;
import org.tunica.pastcases.PastCase;
import org.tunica.picture.OutcomePicture;
import org.tunica.plan.Advice;
import org.tunica.statistics.LogRank;

/** Audits past cases. Safe for several threads. */
public final class Auditor {
    private final Knowledge knowledge;
    private final OutcomeNumbers numbers;
    private final SegmentOutcomes outcomes;
    private final Happenings happenings;
    private final Splitter splitter;
    private final Tally tally;
    private final long seed;

    /**
     * With the definitions of a release.
     *
     * @param seed of the draws by which limits of charts are found
     */
    public Auditor(Knowledge knowledge, long seed) {
        this.knowledge = knowledge;
        this.numbers = OutcomeNumbers.of(knowledge);
        this.outcomes = new SegmentOutcomes(knowledge);
        this.happenings = new Happenings(knowledge);
        this.splitter = new Splitter(numbers);
        this.tally = new Tally(numbers);
        this.seed = seed;
    }

    /**
     * The audit of past cases, in the order in which they stand in their base.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that cannot be asked, or what the cases cannot be read for
     */
    public Audit audit(EachCase cases, AuditQuestion question) {
        question.check(knowledge);
        List<SegmentOutcome> asked = new ArrayList<>();
        cases.to(one -> add(one, question, asked));
        return audit(asked, question);
    }

    private void add(PastCase pastCase, AuditQuestion question, List<SegmentOutcome> asked) {
        outcomes.of(pastCase).stream().filter(question::holds).forEach(asked::add);
    }

    private Audit audit(List<SegmentOutcome> asked, AuditQuestion question) {
        Groups groups = Groups.of(asked, numbers, knowledge);
        return new Audit(
                Audit.FORMAT,
                Advice.CAUTION,
                question,
                asked.stream().anyMatch(SegmentOutcome::invented),
                groups.segments(),
                groups.segments().isPresent()
                        ? tally.rare(asked, one -> one.year().isEmpty())
                        : Counted.withheld(),
                groups.neverFollowed(),
                groups.told().stream().map(this::technique).toList(),
                groups.notTold(),
                question.compare().isEmpty() ? List.of() : compared(question.compare(), groups),
                Stream.concat(Stream.of(Cautions.WATCHED, Cautions.SPLIT), Cautions.always(numbers.k()))
                        .toList(),
                seed);
    }

    /** The audit as a page without charts; its tables say the same. */
    public Document text(Audit audit) {
        return new AuditPage(numbers, AuditDrawings.NONE).of(audit);
    }

    /** The audit as a page with charts. */
    public Document page(Audit audit, Advice.Release release) {
        return new AuditPage(numbers, new AuditCharts(numbers, release, audit)).of(audit);
    }

    /** All techniques at one year, as a page without charts. */
    public Document glance(Audit audit) {
        return new AuditPage(numbers, AuditDrawings.NONE).glance(audit);
    }

    /** Its charts, each by a name for its file, with heading, table and notes. */
    public Map<String, OutcomePicture> charts(Audit audit, Advice.Release release, int widthPx) {
        return new AuditCharts(numbers, release, audit).all(widthPx);
    }

    private AuditedTechnique technique(Groups.Kind kind) {
        PublishedRisk risk = new PublishedRisk(knowledge);
        Watcher watcher = new Watcher(numbers, risk, seed);
        Optional<Watch> watch = watcher.of(kind.segments());
        return new AuditedTechnique(
                happenings.technique(kind),
                splitter.bySite(kind.segments()),
                splitter.byYear(kind.segments()),
                watch,
                new Remarks(numbers, risk).of(kind.segments(), watch.isPresent()));
    }

    /** Curves of different definitions are not comparable, so each definition that both have is compared for itself. */
    private static List<Compared> compared(List<String> techniques, Groups groups) {
        List<Compared> all = new ArrayList<>();
        for (Groups.Kind first : groups.told()) {
            if (first.technique().equals(techniques.get(0))) {
                groups.told().stream()
                        .filter(second -> second.technique().equals(techniques.get(1)))
                        .filter(second -> second.closure() == first.closure())
                        .forEach(second -> all.add(compared(techniques, first, second)));
            }
        }
        Set<String> told = groups.told().stream().map(Groups.Kind::technique).collect(Collectors.toSet());
        if (all.isEmpty()) {
            String why = told.containsAll(techniques)
                    ? "Not compared: the two are counted by different definitions of closure."
                    : "Not compared: of one of the two there are too few to tell, or none.";
            all.add(new Compared(techniques, Optional.empty(), Optional.empty(), why));
        }
        return all;
    }

    private static Compared compared(List<String> techniques, Groups.Kind first, Groups.Kind second) {
        boolean followed = !Curves.cases(first.segments()).isEmpty()
                && !Curves.cases(second.segments()).isEmpty();
        Optional<LogRank> found = followed
                ? LogRank.of(Curves.cases(first.segments()), Curves.cases(second.segments()))
                : Optional.empty();
        String says = found.isPresent()
                ? "Whether the two curves differ more than chance explains; not why, for nobody drew lots."
                : "Not compared: no vein opened while both groups were still followed.";
        return new Compared(techniques, Optional.of(first.closure()), found, says);
    }
}
