package org.tunica.mutation;

import io.cucumber.core.cli.Main;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tunica.features.Clinic;
import org.tunica.features.FeaturesTest;

/** What scenarios claim, taken down while they run once against the shipped rules. */
final class Recording {
    private static final List<Expectation> TAKEN = new ArrayList<>();

    private Recording() {}

    /** One claim of a scenario, with the ids of the rules the scenario is tagged with. */
    record Expectation(Set<String> tags, String scenario, Clinic.Claimed claimed) {}

    /** Runs the scenarios of some folders or files and gives their claims in order. */
    static synchronized List<Expectation> of(String... features) {
        TAKEN.clear();
        byte failed = Main.run(Stream.concat(
                        Stream.of(
                                "--glue",
                                "org.tunica.features",
                                "--glue",
                                "org.tunica.mutation",
                                "--tags",
                                FeaturesTest.ABOUT_A_CASE,
                                "--no-summary"),
                        Stream.of(features))
                .toArray(String[]::new));
        if (failed != 0) {
            throw new IllegalStateException("the scenarios fail against the shipped rules, so nothing can be learnt");
        }
        return List.copyOf(TAKEN);
    }

    static void take(Expectation expectation) {
        TAKEN.add(expectation);
    }
}
