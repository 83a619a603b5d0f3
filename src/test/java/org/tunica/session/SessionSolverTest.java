package org.tunica.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The solver against trying everything, on small sessions drawn at random. */
class SessionSolverTest {
    private static final int TRIES = 500;

    @Test
    void theBestOfFiveHundredRandomSessionsIsTheBestThereIs() {
        Random random = new Random(5);
        int bound = 0;
        int split = 0;
        for (int i = 0; i < TRIES; i++) {
            Problem problem = problem(random);
            int sessions = 1 + random.nextInt(2);
            SessionSolver.Solved solved = SessionSolver.solve(problem, sessions);
            assertTrue(solved.proved());
            assertTrue(keeps(problem, solved, sessions), problem + " " + solved);
            assertEquals(byTrying(problem, sessions), solved.worth(), problem.toString());
            bound += solved.worth() < problem.bound() ? 1 : 0;
            split += solved.placed().stream().flatMap(Optional::stream).anyMatch(one -> one.session() == 1) ? 1 : 0;
        }
        assertTrue(bound > 100 && bound < 400, bound + " of the sessions were bound");
        assertTrue(split > 50, split + " were split");
    }

    @Test
    void theSameProblemGivesTheSamePlan() {
        Problem problem = problem(new Random(11));
        assertEquals(SessionSolver.solve(problem, 2), SessionSolver.solve(problem, 2));
    }

    @Test
    void whereNothingFitsEverySegmentIsLeft() {
        Choice big = new Choice("big", 100, Map.of(Shared.FOAM, 9), Optional.empty(), false);
        Problem problem = new Problem(List.of(List.of(big)), Map.of(Shared.FOAM, 8), 0, 0, 0, 1);
        assertEquals(List.of(Optional.empty()), SessionSolver.solve(problem, 2).placed());
    }

    @Test
    void twoGeneratorsDoNotShareASession_butTwoSessionsHoldThem() {
        Problem problem =
                new Problem(List.of(List.of(on("laser")), List.of(on("radiofrequency"))), Map.of(), 0, 0, 0, 1);
        assertEquals(10, SessionSolver.solve(problem, 1).worth());
        assertEquals(20, SessionSolver.solve(problem, 2).worth());
        assertFalse(SessionSolver.solve(problem, 2).placed().contains(Optional.<SessionSolver.Placed>empty()));
    }

    private static Choice on(String generator) {
        return new Choice(generator, 10, Map.of(), Optional.of(generator), false);
    }

    private static Problem problem(Random random) {
        List<List<Choice>> segments = new ArrayList<>();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            List<Choice> choices = new ArrayList<>();
            boolean prone = random.nextInt(4) == 0;
            for (int j = random.nextInt(5); j >= 0; j--) {
                choices.add(choice(random, prone, j));
            }
            segments.add(choices);
        }
        Map<Shared, Integer> limits = new EnumMap<>(Shared.class);
        for (Shared shared : Shared.AMOUNTS) {
            if (random.nextInt(3) > 0) {
                limits.put(shared, 4 + random.nextInt(14));
            }
        }
        return new Problem(segments, limits, random.nextInt(4), random.nextInt(3), random.nextInt(3), 1);
    }

    private static Choice choice(Random random, boolean prone, int number) {
        Map<Shared, Integer> takes = new EnumMap<>(Shared.class);
        for (Shared shared : Shared.AMOUNTS) {
            if (random.nextInt(2) == 0) {
                takes.put(shared, random.nextInt(9));
            }
        }
        Optional<String> generator =
                random.nextInt(2) == 0 ? Optional.empty() : Optional.of("generator " + random.nextInt(2));
        return new Choice("technique " + number, 1 + random.nextInt(30), takes, generator, prone);
    }

    private static int byTrying(Problem problem, int sessions) {
        return tried(problem, sessions, new ArrayList<>());
    }

    private static int tried(Problem problem, int sessions, List<Optional<SessionSolver.Placed>> placed) {
        if (placed.size() == problem.segments().size()) {
            SessionSolver.Solved one = new SessionSolver.Solved(placed, true);
            return keeps(problem, one, sessions) ? one.worth() : -1;
        }
        List<Optional<SessionSolver.Placed>> may = new ArrayList<>();
        may.add(Optional.empty());
        for (Choice choice : problem.segments().get(placed.size())) {
            for (int session = 0; session < sessions; session++) {
                may.add(Optional.of(new SessionSolver.Placed(choice, session)));
            }
        }
        int best = -1;
        for (Optional<SessionSolver.Placed> one : may) {
            List<Optional<SessionSolver.Placed>> longer = new ArrayList<>(placed);
            longer.add(one);
            best = Math.max(best, tried(problem, sessions, longer));
        }
        return best;
    }

    /** Whether every session keeps every limit, counted without the solver. */
    private static boolean keeps(Problem problem, SessionSolver.Solved solved, int sessions) {
        for (int session = 0; session < sessions; session++) {
            int at = session;
            List<Choice> choices = solved.placed().stream()
                    .flatMap(Optional::stream)
                    .filter(one -> one.session() == at)
                    .map(SessionSolver.Placed::choice)
                    .toList();
            Set<String> generators = new HashSet<>();
            choices.forEach(choice -> choice.generator().ifPresent(generators::add));
            if (generators.size() > problem.generatorsMost() || !keepsAmounts(problem, choices, generators.size())) {
                return false;
            }
        }
        return true;
    }

    private static boolean keepsAmounts(Problem problem, List<Choice> choices, int generators) {
        for (Map.Entry<Shared, Integer> limit : problem.limits().entrySet()) {
            int taken = choices.stream()
                    .mapToInt(choice -> choice.takes(limit.getKey()))
                    .sum();
            if (limit.getKey() == Shared.TIME && !choices.isEmpty()) {
                taken += problem.start() + generators * problem.generatorTime();
                taken += choices.stream().anyMatch(Choice::prone) ? problem.turnTime() : 0;
            }
            if (taken > limit.getValue()) {
                return false;
            }
        }
        return true;
    }
}
