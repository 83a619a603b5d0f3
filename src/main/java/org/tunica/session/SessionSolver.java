package org.tunica.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.variables.InputOrder;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/**
 * Chooses for every segment at most one technique and the session it is done in, so that no shared limit is passed and
 * the points together are the most there can be.
 *
 * <p>One variable a segment: 0 leaves it, every other value is a choice in a session. The search tries the choice with the
 * most points first, so the first plan found is good and most plans are proved at once. It stops after a number of nodes,
 * not after a time: the same case gives the same plan on any machine.
 */
final class SessionSolver {
    /** Far more than the largest cases need; reaching it is told, never hidden. */
    static final long MOST_NODES = 200_000;

    private final Problem problem;
    private final int sessions;
    private final Model model = new Model();
    private final List<Values> values = new ArrayList<>();

    private SessionSolver(Problem problem, int sessions) {
        this.problem = problem;
        this.sessions = sessions;
    }

    /** The best plan in so many sessions. */
    static Solved solve(Problem problem, int sessions) {
        return new SessionSolver(problem, sessions).solve();
    }

    private Solved solve() {
        for (int segment = 0; segment < problem.segments().size(); segment++) {
            // sessions are alike, so the first segment takes the first, the second one of the first two, and so on
            int open = Math.min(sessions, segment + 1);
            values.add(new Values(model, problem.segments().get(segment), open, segment));
        }
        for (int session = 0; session < sessions; session++) {
            constrain(session);
        }
        IntVar worth = model.intVar("worth", 0, problem.bound());
        model.sum(values.stream().map(Values::worth).toArray(IntVar[]::new), "=", worth)
                .post();
        return search(worth);
    }

    private Solved search(IntVar worth) {
        IntVar[] chosen = values.stream().map(Values::chosen).toArray(IntVar[]::new);
        Solver solver = model.getSolver();
        solver.setSearch(Search.intVarSearch(new InputOrder<>(model), this::mostPoints, chosen));
        solver.limitNode(MOST_NODES);
        Solution best = solver.findOptimalSolution(worth, Model.MAXIMIZE);
        boolean proved = !solver.isStopCriterionMet();
        List<Optional<Placed>> placed = new ArrayList<>();
        for (Values of : values) {
            placed.add(best == null ? Optional.empty() : of.placed(best.getIntVal(of.chosen())));
        }
        return new Solved(placed, proved);
    }

    /** The value with the most points; of equals the earlier session and the earlier choice. */
    private int mostPoints(IntVar chosen) {
        Values of = values.stream()
                .filter(one -> one.chosen() == chosen)
                .findFirst()
                .orElseThrow();
        int best = chosen.getLB();
        for (int value = chosen.getLB(); value <= chosen.getUB(); value = chosen.nextValue(value)) {
            if (of.worthOf(value) > of.worthOf(best)) {
                best = value;
            }
        }
        return best;
    }

    private void constrain(int session) {
        for (Shared shared : Shared.AMOUNTS) {
            Integer limit = problem.limits().get(shared);
            if (limit != null) {
                List<IntVar> parts = new ArrayList<>();
                values.forEach(of -> parts.add(of.takes(shared, session)));
                if (shared == Shared.TIME) {
                    parts.addAll(overhead(session));
                }
                model.sum(parts.toArray(IntVar[]::new), "<=", limit).post();
            }
        }
        List<BoolVar> generators = generators(session);
        if (generators.size() > problem.generatorsMost()) {
            model.sum(generators.toArray(BoolVar[]::new), "<=", problem.generatorsMost())
                    .post();
        }
    }

    /** Time a session takes beside the work on its segments. */
    private List<IntVar> overhead(int session) {
        List<IntVar> parts = new ArrayList<>();
        parts.add(model.mul(some(session, choice -> true), problem.start()));
        parts.add(model.mul(some(session, Choice::prone), problem.turnTime()));
        generators(session).forEach(one -> parts.add(model.mul(one, problem.generatorTime())));
        return parts;
    }

    private List<BoolVar> generators(int session) {
        Set<String> names = new TreeSet<>();
        problem.segments()
                .forEach(choices -> choices.forEach(choice -> choice.generator().ifPresent(names::add)));
        return names.stream()
                .map(name -> some(session, choice -> choice.generator().equals(Optional.of(name))))
                .toList();
    }

    /** Whether any segment gets such a choice in a session. */
    private BoolVar some(int session, Predicate<Choice> such) {
        BoolVar[] each = values.stream()
                .map(of -> of.isOne(session, such))
                .flatMap(Optional::stream)
                .toArray(BoolVar[]::new);
        BoolVar some = model.boolVar();
        if (each.length == 0) {
            model.arithm(some, "=", 0).post();
        } else {
            model.max(some, each).post();
        }
        return some;
    }

    /** A choice in a session, counted from 0. */
    record Placed(Choice choice, int session) {}

    /**
     * What was found.
     *
     * @param placed by segment; empty for a segment that is left
     * @param proved whether nothing better exists; false when the search stopped early
     */
    record Solved(List<Optional<Placed>> placed, boolean proved) {
        int worth() {
            return placed.stream()
                    .flatMap(Optional::stream)
                    .mapToInt(one -> one.choice().worth())
                    .sum();
        }
    }
}
