package org.tunica.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the pages people read and sign. */
@Command(
        name = "book",
        description =
                "Write the rule book, the grammar page for authors of rules and the hazard log, each as Markdown and as"
                        + " one HTML file.",
        mixinStandardHelpOptions = true)
final class RulesBookCommand implements Callable<Integer> {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Where they go; files there are replaced.")
    private String out = "";

    @Option(
            names = "--rules",
            paramLabel = "DIR",
            description =
                    "A folder or .zip with rules/ and knowledge/, perhaps features/ (default: those of the program).")
    private Optional<String> folder = Optional.empty();

    @Option(
            names = "--on",
            paramLabel = "DATE",
            description = "The day reviews are judged overdue on (default: today).")
    private Optional<LocalDate> day = Optional.empty();

    @Spec
    private CommandSpec spec;

    RulesBookCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Optional<RuleFolder> rules = folder.map(RuleFolder::of);
        Tunica tunica = rules.map(of -> Tunica.of(of.bundle())).orElseGet(Tunica::shipped);
        LocalDate on = day.orElseGet(() -> LocalDate.now(Clock.systemDefaultZone()));
        try {
            tunica.review().writeBook(Path.of(out), rules.flatMap(RuleFolder::features), on);
        } catch (IOException | InvalidPathException e) {
            throw new FaultyInput("output", List.of(new Fault(out, "cannot be written: " + e.getMessage())));
        }
        spec.commandLine().getOut().println("Rule book, grammar and hazard log are in " + out + ".");
        return 0;
    }
}
