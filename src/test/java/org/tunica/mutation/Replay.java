package org.tunica.mutation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.FaultyInput;
import org.tunica.features.Engine;
import org.tunica.mutation.Recording.Expectation;
import org.tunica.physics.Physics;

/** Holds recorded scenarios against mutants. */
final class Replay {
    private final List<Expectation> expectations;
    private final Physics physics;

    Replay(List<Expectation> expectations, Physics physics) {
        this.expectations = expectations;
        this.physics = physics;
    }

    /** How a mutant ended. */
    enum End {
        /** A scenario fails. */
        NOTICED,
        /** The files would not be accepted at the start. */
        REFUSED,
        /** Nothing fails. */
        SURVIVES
    }

    /** @param by the scenario that fails, or the first reason for refusal, or nothing */
    record Outcome(Mutant mutant, End end, String by) {}

    Outcome of(Mutant mutant) {
        try {
            Engine engine = mutant.engine(physics);
            return firstToFail(mutant, engine)
                    .map(scenario -> new Outcome(mutant, End.NOTICED, scenario))
                    .orElse(new Outcome(mutant, End.SURVIVES, ""));
        } catch (FaultyInput refused) {
            return new Outcome(mutant, End.REFUSED, refused.faults().get(0).toString());
        }
    }

    /** Scenarios of the rule itself first, for they are the likeliest to fail. */
    private Optional<String> firstToFail(Mutant mutant, Engine engine) {
        return expectations.stream()
                .sorted(Comparator.comparing(
                        expectation -> expectation.tags().stream().noneMatch(mutant.about()::contains)))
                .filter(expectation -> fails(expectation, engine))
                .map(Expectation::scenario)
                .findFirst();
    }

    private static boolean fails(Expectation expectation, Engine engine) {
        try {
            expectation.claimed().check(engine);
            return false;
        } catch (AssertionError noticed) {
            return true;
        }
    }
}
