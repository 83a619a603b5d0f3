package org.tunica.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.cluster.Cluster;
import org.tunica.cluster.EngineAddress;
import org.tunica.cluster.Verification;
import org.tunica.invented.InventedLibrary;
import org.tunica.plan.Advice;
import org.tunica.similar.CaseSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The index of past segments on a search engine that many share. */
@Command(
        name = "index",
        description =
                "Load the past segments of a case base into a search engine that many share, and check them there."
                        + " Without it each machine keeps an index of its own beside its cases.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class IndexCommand {
    private static final int WRONG = 2;

    @Spec
    private CommandSpec spec;

    IndexCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(
            name = "rebuild",
            description =
                    "Load all cases into a new index; it takes the place of the one in use when all of it is there.",
            footer = {"", Advice.CAUTION},
            mixinStandardHelpOptions = true)
    int rebuild(
            @Option(names = "--to", paramLabel = "URL", required = true, description = TO) String url,
            @Option(names = "--cases", paramLabel = "FOLDER", description = CASES) Optional<Path> cases,
            @Option(
                            names = "--shards",
                            paramLabel = "N",
                            defaultValue = "3",
                            description = "Parts of the index (default: ${DEFAULT-VALUE}).")
                    int shards,
            @Option(
                            names = "--copies",
                            paramLabel = "N",
                            defaultValue = "1",
                            description = "Copies of each part beside the first (default: ${DEFAULT-VALUE}).")
                    int copies,
            @Option(names = "--over", description = "Throw away what a load that died has left.") boolean over) {
        EngineAddress address = EngineAddress.of(url, System.getenv());
        Tunica tunica = Tunica.shipped();
        try (ProgressBar bar =
                ProgressBar.atTerminal("loading", spec.commandLine().getErr())) {
            Cluster.Rebuilt rebuilt = tunica.likeness()
                    .cluster(address)
                    .rebuild(source(tunica, cases), new Cluster.Spread(shards, copies, over), bar);
            print("%,d treated segments of %,d cases are loaded and in use.", rebuilt.segments(), rebuilt.cases());
        }
        return 0;
    }

    @Command(
            name = "verify",
            description = "Hold the index in use against the cases, segment by segment.",
            footer = {"", Advice.CAUTION},
            mixinStandardHelpOptions = true)
    int verify(
            @Option(names = "--to", paramLabel = "URL", required = true, description = TO) String url,
            @Option(names = "--cases", paramLabel = "FOLDER", description = CASES) Optional<Path> cases) {
        EngineAddress address = EngineAddress.of(url, System.getenv());
        Tunica tunica = Tunica.shipped();
        Verification found;
        try (ProgressBar bar =
                ProgressBar.atTerminal("comparing", spec.commandLine().getErr())) {
            found = tunica.likeness().cluster(address).verify(source(tunica, cases), bar);
        }
        print(
                "%,d segments of the cases; of these %,d are missing in the index and %,d differ; %,d in the index are none"
                        + " of theirs.",
                found.segments(), found.missing(), found.different(), found.extra());
        found.missingIds().forEach(id -> print("missing: %s", id));
        found.differentIds().forEach(id -> print("different: %s", id));
        print(found.holds() ? "The index holds." : "Load it anew with \"index rebuild\".");
        return found.holds() ? 0 : WRONG;
    }

    private static final String TO =
            "The search engine: https://HOST:PORT, several with commas between; name and password" + " are read from "
                    + EngineAddress.USER + " and " + EngineAddress.PASSWORD + ".";

    private static final String CASES = "The case base (default: the library of made-up cases).";

    private static CaseSource source(Tunica tunica, Optional<Path> cases) {
        return cases.map(tunica.likeness()::source)
                .orElseGet(() ->
                        tunica.likeness().inventedSource(InventedLibrary.USUAL_SEED, InventedLibrary.USUAL_COUNT));
    }

    private void print(String says, Object... numbers) {
        spec.commandLine().getOut().println(String.format(Locale.ROOT, says, numbers));
        spec.commandLine().getOut().flush();
    }
}
