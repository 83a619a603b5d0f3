package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import picocli.CommandLine.Option;

/** Which rules a command runs: those of the program, a draft, or those in force at a place, now or on an earlier day. */
final class RulesInUse {
    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description =
                    "Run the release in force there (a folder, or a jdbc:postgresql: URL). Without it the program's"
                            + " own rules run, and the output says DRAFT.")
    private Optional<String> place = Optional.empty();

    @Option(
            names = "--as-of",
            paramLabel = "DAY|VERSION",
            description =
                    "Run the release that was in force there on a day, at a moment such as 2026-03-01T08:00:00Z, or"
                            + " by its version; the answer is the same bytes as then.")
    private Optional<String> asOf = Optional.empty();

    /** @throws FaultyInput when the release in force may not be used, or nothing was in force then */
    Consulted open() {
        if (place.isEmpty() && asOf.isPresent()) {
            throw new FaultyInput("input", List.of(new Fault("--as-of", "needs --data, where the releases are kept")));
        }
        return place.map(data -> Consulted.at(data, asOf)).orElseGet(Consulted::ownRules);
    }
}
