package org.tunica.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.OptionNumbers;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;

/** From the advice for each segment to one plan for all of them. */
public final class SessionPlanner {
    /** Ids of the numbers of knowledge/ that session planning reads. */
    public static final Set<String> IDS = Stream.of(SessionConstants.IDS, SharedLimits.IDS)
            .flatMap(Set::stream)
            .collect(Collectors.toUnmodifiableSet());

    private final SessionConstants constants;
    private final TimeEstimate times;
    private final SharedLimits limits;
    private final Worth worth;
    private final Candidates candidates;
    private final PlanWriter writer;

    /** A planner over the knowledge and models of one release. */
    public SessionPlanner(Knowledge knowledge, Physics physics) {
        this.constants = new SessionConstants(knowledge);
        this.times = new TimeEstimate(knowledge, constants);
        this.limits = new SharedLimits(knowledge);
        this.worth = new Worth(constants);
        this.candidates = new Candidates(knowledge, physics, worth);
        this.writer = new PlanWriter(knowledge, constants);
    }

    /** Working time on one segment in minutes; empty when its length is not recorded. */
    public OptionalDouble minutes(Technique technique, Segment segment, OptionNumbers numbers) {
        List<TimePart> parts = times.parts(technique, segment, numbers);
        return parts.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        parts.stream().mapToDouble(TimePart::workMinutes).sum());
    }

    /** The best plan for a case: one technique a segment, in as few sessions as are worth it. */
    public SessionPlan plan(CaseFile caseFile, Advice advice) {
        List<Asked> asked = asked(caseFile, advice);
        Map<Shared, SharedLimit> most = limits.of(caseFile);
        Problem problem = problem(asked, most);
        List<SessionSolver.Solved> byCount = byCount(problem);
        int best = best(byCount);
        SessionSolver.Solved solved = byCount.get(best);
        Map<Shared, SessionSolver.Solved> relaxed = relaxed(problem, most, byCount.get(0));
        return writer.write(
                caseFile, advice, new Found(asked, most, byCount.subList(0, best), solved, best + 1, relaxed));
    }

    private List<Asked> asked(CaseFile caseFile, Advice advice) {
        List<Asked> asked = new ArrayList<>();
        int next = 0;
        for (Limb limb : caseFile.limbs()) {
            for (Segment segment : limb.segments()) {
                SegmentAdvice of = advice.segments().get(next++);
                asked.add(new Asked(limb, segment, of, candidates.of(caseFile, limb, segment, of)));
            }
        }
        return asked;
    }

    private Problem problem(List<Asked> asked, Map<Shared, SharedLimit> most) {
        Map<Shared, Integer> steps = new EnumMap<>(Shared.class);
        Shared.AMOUNTS.stream()
                .filter(most::containsKey)
                .forEach(shared -> steps.put(shared, Steps.down(most.get(shared).limit())));
        return new Problem(
                asked.stream().map(one -> Pruned.of(one.candidates(), most)).toList(),
                steps,
                Steps.up(constants.of("session.time.start") + constants.of("session.time.close")),
                Steps.up(constants.of("session.time.generator")),
                Steps.up(constants.of("session.time.turn")),
                (int) constants.of("session.generators.most"));
    }

    /** The best plans in one session, in two, and so on, until nothing more could be gained. */
    private List<SessionSolver.Solved> byCount(Problem problem) {
        List<SessionSolver.Solved> found = new ArrayList<>();
        int most = (int) constants.of("session.stages.most");
        do {
            found.add(SessionSolver.solve(problem, found.size() + 1));
        } while (found.size() < most && found.get(found.size() - 1).worth() < problem.bound());
        return found;
    }

    /** The count after which a further session gains less than it must. */
    private int best(List<SessionSolver.Solved> byCount) {
        int best = 0;
        for (int i = 1; i < byCount.size(); i++) {
            int gain = byCount.get(i).worth() - byCount.get(best).worth();
            if (gain > worth.aFurtherSession() * (i - best)) {
                best = i;
            }
        }
        return best;
    }

    /** For each limit: the best plan in one session without it, where that is better. */
    private static Map<Shared, SessionSolver.Solved> relaxed(
            Problem problem, Map<Shared, SharedLimit> most, SessionSolver.Solved inOne) {
        Map<Shared, SessionSolver.Solved> better = new EnumMap<>(Shared.class);
        if (inOne.worth() == problem.bound()) {
            return better;
        }
        for (Shared shared : most.keySet()) {
            SessionSolver.Solved without = SessionSolver.solve(problem.without(shared), 1);
            if (without.worth() > inOne.worth()) {
                better.put(shared, without);
            }
        }
        return better;
    }

    /** A segment with its advice and its candidates, best first. */
    record Asked(Limb limb, Segment segment, SegmentAdvice advice, List<Candidate> candidates) {
        Optional<Candidate> of(String technique) {
            return candidates.stream()
                    .filter(candidate -> candidate.option().technique().equals(technique))
                    .findFirst();
        }
    }

    /**
     * Everything found out about a case.
     *
     * @param fewer the best plans in fewer sessions, in order of their count
     * @param relaxed the best plans in one session without one limit each, where better
     */
    record Found(
            List<Asked> asked,
            Map<Shared, SharedLimit> limits,
            List<SessionSolver.Solved> fewer,
            SessionSolver.Solved solved,
            int sessions,
            Map<Shared, SessionSolver.Solved> relaxed) {}
}
