package org.tunica.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import org.tunica.proposal.NewRecord;
import org.tunica.proposal.Opening;
import org.tunica.proposal.WorkingCopy;
import org.tunica.releases.ChangeDesk;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Begins a change. */
@Command(
        name = "start",
        description = "Begin a change: copy the rules and the knowledge in force into a new folder, with a draft of the"
                + " change record. Edit them there with any editor of plain text.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ChangeStartCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(paramLabel = "DIR", description = "The folder to make.")
    private String folder = "";

    @Option(names = "--title", required = true, paramLabel = "WORDS", description = "What it is about.")
    private String title = "";

    @Option(names = "--author", required = true, paramLabel = "NAME", description = "Your user name.")
    private String author = "";

    @Option(names = "--initials", required = true, paramLabel = "XY", description = "As the record will show them.")
    private String initials = "";

    @Option(
            names = "--features",
            paramLabel = "DIR",
            description = "Scenarios to copy too (default: those of the release in force).")
    private Optional<String> features = Optional.empty();

    @Spec
    private CommandSpec spec;

    ChangeStartCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        NewRecord first = new NewRecord(title, initials);
        try (OpenReleases open = OpenReleases.at(data.place())) {
            ChangeDesk.Start start = open.changes().start();
            LocalDate today = LocalDate.ofInstant(open.clock().instant(), ZoneOffset.UTC);
            String number = NewRecord.nextNumber(Tunica.of(start.bundle()).knowledge());
            Opening opening =
                    new Opening(number, author, start.release(), start.bundle().digest(), today);
            SortedMap<String, String> scenarios =
                    features.map(ChangeStartCommand::scenarios).orElseGet(open.changes()::scenarios);
            begin(start, opening, first, scenarios);
            spec.commandLine()
                    .getOut()
                    .println("Change " + number + " begun in " + folder + " with "
                            + (start.release().equals("draft")
                                    ? "the program's own rules (none is in force here)"
                                    : "release " + start.release())
                            + ". What it began with stands in before/; leave that as it is.");
        }
        return 0;
    }

    private void begin(ChangeDesk.Start start, Opening opening, NewRecord first, SortedMap<String, String> scenarios) {
        try {
            WorkingCopy.begin(
                    Path.of(folder), start.bundle(), scenarios, opening, first.draft(opening.number(), opening.on()));
        } catch (IOException e) {
            throw new FaultyInput("output", List.of(new Fault(folder, "cannot be written: " + e.getMessage())));
        }
    }

    private static SortedMap<String, String> scenarios(String named) {
        Path root = RuleFolder.of(named).path();
        SortedMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> walk = Files.walk(root)) {
            for (Path file :
                    walk.filter(path -> path.toString().endsWith(".feature")).toList()) {
                String name = root.relativize(file)
                        .toString()
                        .replace(file.getFileSystem().getSeparator(), "/");
                texts.put("features/" + name, Files.readString(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }
}
