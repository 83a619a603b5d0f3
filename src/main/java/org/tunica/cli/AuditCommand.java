package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.invented.InventedLibrary;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.pastcases.PastCase;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Audits the results of past cases. */
@Command(
        name = "audit",
        description =
                "How many treated veins were closed when, how long they stayed so and what went wrong, by technique, site and"
                        + " year; and whether that is what published rates led to expect.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class AuditCommand implements Callable<Integer> {
    @Option(names = "--site", paramLabel = "SITE", description = "Only cases of this site, a pseudonym.")
    private Optional<String> site = Optional.empty();

    @Option(names = "--technique", paramLabel = "ID", description = "Only this technique.")
    private Optional<String> technique = Optional.empty();

    @Option(names = "--from", paramLabel = "YEAR", description = "Only cases treated in this year or later.")
    private Optional<Integer> from = Optional.empty();

    @Option(names = "--to", paramLabel = "YEAR", description = "Only cases treated in this year or earlier.")
    private Optional<Integer> to = Optional.empty();

    @Option(
            names = "--compare",
            paramLabel = "ID",
            split = ",",
            description = "Two techniques, separated by a comma, whose curves are compared (log-rank).")
    private List<String> compare = List.of();

    @Option(names = "--json", description = "Print as JSON (tunica-audit/1).")
    private boolean json;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "Width of the text, 60 to 160 (default: that of the terminal).")
    private int width = TextWidth.ofTerminal();

    @Spec
    private CommandSpec spec;

    AuditCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        TextWidth.check(width, spec);
        Tunica tunica = Tunica.shipped();
        Audit audit = tunica.audit(cases(tunica), new AuditQuestion(site, technique, year(from), year(to), compare));
        spec.commandLine().getOut().print(json ? tunica.toJson(audit) : new PaperText(width).of(tunica.text(audit)));
        return 0;
    }

    private static Stream<PastCase> cases(Tunica tunica) {
        return new InventedLibrary(tunica.knowledge(), InventedLibrary.USUAL_SEED).cases(InventedLibrary.USUAL_COUNT);
    }

    private static OptionalInt year(Optional<Integer> year) {
        return year.isPresent() ? OptionalInt.of(year.get()) : OptionalInt.empty();
    }
}
