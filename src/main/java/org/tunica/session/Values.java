package org.tunica.session;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** What one segment may get, as the values of one variable: 0 is nothing, then every choice in every session. */
final class Values {
    private final Model model;
    private final List<Choice> choices;
    private final int sessions;
    private final IntVar chosen;

    Values(Model model, List<Choice> choices, int sessions, int number) {
        this.model = model;
        this.choices = choices;
        this.sessions = sessions;
        this.chosen = model.intVar("segment " + number, 0, choices.size() * sessions);
    }

    IntVar chosen() {
        return chosen;
    }

    /** The points of whatever is chosen. */
    IntVar worth() {
        return looked(IntStream.rangeClosed(0, choices.size() * sessions)
                .map(this::worthOf)
                .toArray());
    }

    /** What is taken of a share in a session. */
    IntVar takes(Shared shared, int session) {
        return looked(table(session, choice -> choice.takes(shared)));
    }

    /** Whether such a choice is made in a session; empty when none could be. */
    Optional<BoolVar> isOne(int session, Predicate<Choice> such) {
        int[] table = table(session, choice -> such.test(choice) ? 1 : 0);
        if (IntStream.of(table).allMatch(one -> one == 0)) {
            return Optional.empty();
        }
        BoolVar one = model.boolVar();
        model.element(one, table, chosen, 0).post();
        return Optional.of(one);
    }

    int worthOf(int value) {
        return value == 0 ? 0 : choices.get((value - 1) % choices.size()).worth();
    }

    Optional<SessionSolver.Placed> placed(int value) {
        return value == 0
                ? Optional.empty()
                : Optional.of(new SessionSolver.Placed(
                        choices.get((value - 1) % choices.size()), (value - 1) / choices.size()));
    }

    private int[] table(int session, ToIntFunction<Choice> read) {
        int[] table = new int[choices.size() * sessions + 1];
        if (session < sessions) {
            for (int i = 0; i < choices.size(); i++) {
                table[1 + session * choices.size() + i] = read.applyAsInt(choices.get(i));
            }
        }
        return table;
    }

    private IntVar looked(int[] table) {
        IntVar found = model.intVar(
                IntStream.of(table).min().orElse(0), IntStream.of(table).max().orElse(0));
        model.element(found, table, chosen, 0).post();
        return found;
    }
}
