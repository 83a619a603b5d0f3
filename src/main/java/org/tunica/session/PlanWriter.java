package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;

/** Writes what was found out about a case as a plan for people. */
final class PlanWriter {
    private final WorkOrder order;
    private final SessionWriter sessions;

    PlanWriter(Knowledge knowledge, SessionConstants constants) {
        this.order = new WorkOrder(knowledge);
        this.sessions = new SessionWriter(knowledge, constants);
    }

    SessionPlan write(CaseFile caseFile, Advice advice, SessionPlanner.Found found) {
        return new SessionPlan(
                SessionPlan.FORMAT,
                advice.caseRef(),
                advice.release(),
                Advice.CAUTION,
                caseFile,
                sessions(found),
                left(found),
                found.solved().proved(),
                Worth.points(found.solved().worth()),
                fewer(found),
                bound(found));
    }

    private List<SessionPlan.Session> sessions(SessionPlanner.Found found) {
        List<SessionPlan.Session> written = new ArrayList<>();
        for (int session = 0; session < found.sessions(); session++) {
            List<Candidate> chosen = WorkOrder.ordered(chosen(found, found.solved(), session));
            if (!chosen.isEmpty()) {
                written.add(sessions.write(written.size() + 1, steps(found, chosen), chosen, found.limits()));
            }
        }
        return written;
    }

    private static List<Candidate> chosen(SessionPlanner.Found found, SessionSolver.Solved solved, int session) {
        List<Candidate> chosen = new ArrayList<>();
        for (int i = 0; i < found.asked().size(); i++) {
            SessionPlanner.Asked asked = found.asked().get(i);
            solved.placed()
                    .get(i)
                    .filter(placed -> placed.session() == session)
                    .flatMap(placed -> asked.of(placed.choice().technique()))
                    .ifPresent(chosen::add);
        }
        return chosen;
    }

    private List<SessionPlan.Step> steps(SessionPlanner.Found found, List<Candidate> chosen) {
        List<SessionPlan.Step> steps = new ArrayList<>();
        for (Candidate one : chosen) {
            steps.add(new SessionPlan.Step(
                    steps.size() + 1,
                    one.segment().ref(),
                    one.limb().side(),
                    one.segment().vein(),
                    one.segment().level(),
                    one.option().technique(),
                    one.option().says(),
                    one.option().standing(),
                    one.option().rank().orElseThrow(),
                    instead(found, one),
                    one.demand().position(),
                    one.option().settings(),
                    one.demand().time(),
                    order.because(one, chosen.subList(0, steps.size()))));
        }
        return steps;
    }

    /** The technique first in rank, when another one is taken. */
    private static Optional<String> instead(SessionPlanner.Found found, Candidate one) {
        return found.asked().stream()
                .filter(asked -> asked.segment() == one.segment())
                .flatMap(asked -> asked.advice().options().stream())
                .filter(option -> option.rank().equals(OptionalInt.of(1)))
                .filter(option -> !option.technique().equals(one.option().technique()))
                .map(OptionAdvice::says)
                .findFirst();
    }

    private static List<SessionPlan.Left> left(SessionPlanner.Found found) {
        List<SessionPlan.Left> left = new ArrayList<>();
        for (int i = 0; i < found.asked().size(); i++) {
            SessionPlanner.Asked asked = found.asked().get(i);
            if (found.solved().placed().get(i).isEmpty()) {
                left.add(Leftover.of(asked));
            }
        }
        return left;
    }

    private static List<SessionPlan.Fewer> fewer(SessionPlanner.Found found) {
        List<SessionPlan.Fewer> fewer = new ArrayList<>();
        for (SessionSolver.Solved solved : found.fewer()) {
            fewer.add(new SessionPlan.Fewer(
                    fewer.size() + 1, Worth.points(solved.worth()), changes(found, found.solved(), solved)));
        }
        return fewer;
    }

    /** Each limit is lifted from one session, for that is where it binds. */
    private static List<SessionPlan.Bound> bound(SessionPlanner.Found found) {
        List<SessionPlan.Bound> bound = new ArrayList<>();
        SessionSolver.Solved inOne =
                found.fewer().isEmpty() ? found.solved() : found.fewer().get(0);
        found.relaxed()
                .forEach((shared, without) -> bound.add(new SessionPlan.Bound(
                        shared,
                        shared.says(),
                        found.limits().get(shared).limit(),
                        SessionWriter.rounded(taken(found, without, shared)),
                        shared.unit(),
                        changes(found, inOne, without))));
        return bound;
    }

    private static double taken(SessionPlanner.Found found, SessionSolver.Solved solved, Shared shared) {
        List<Candidate> chosen = chosen(found, solved, 0);
        if (shared == Shared.GENERATOR) {
            return chosen.stream()
                    .flatMap(one -> one.demand().generator().stream())
                    .distinct()
                    .count();
        }
        return chosen.stream().mapToDouble(one -> one.demand().amount(shared)).sum();
    }

    /** What another solution does otherwise, segment by segment. */
    private static List<String> changes(
            SessionPlanner.Found found, SessionSolver.Solved from, SessionSolver.Solved to) {
        List<String> changes = new ArrayList<>();
        for (int i = 0; i < found.asked().size(); i++) {
            SessionPlanner.Asked asked = found.asked().get(i);
            String before = says(asked, from.placed().get(i));
            String after = says(asked, to.placed().get(i));
            if (!before.equals(after)) {
                changes.add(asked.segment().ref() + ": " + after + " instead of " + before);
            }
        }
        return changes;
    }

    private static String says(SessionPlanner.Asked asked, Optional<SessionSolver.Placed> placed) {
        return placed.flatMap(one -> asked.of(one.choice().technique()))
                .map(candidate -> candidate.option().says())
                .orElse("nothing");
    }
}
