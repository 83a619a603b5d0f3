package org.tunica.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.tunica.plan.Advice;
import org.tunica.proposal.NewRecord;
import org.tunica.workroom.Draft;
import org.tunica.workroom.Workroom;
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

    @Parameters(
            arity = "0..1",
            paramLabel = "DIR",
            description =
                    "The folder to make (default: its number under changes/ in the folder of the data, where the pages"
                            + " of a server go on with it).")
    private Optional<String> folder = Optional.empty();

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
        try (OpenReleases open = OpenReleases.at(data)) {
            SortedMap<String, String> scenarios =
                    features.map(ChangeStartCommand::scenarios).orElseGet(open.changes()::scenarios);
            Workroom room = open.workroom();
            Draft draft = folder.isPresent()
                    ? room.begin(author, first, scenarios, Path.of(folder.get()))
                    : room.begin(author, first, scenarios);
            String began = draft.opening().release();
            String place = folder.orElse("changes/" + draft.number() + " in the folder of the data");
            spec.commandLine()
                    .getOut()
                    .println("Change " + draft.number() + " begun in " + place + " with "
                            + (began.equals("draft")
                                    ? "the program's own rules (none is in force here)"
                                    : "release " + began)
                            + ". What it began with stands in before/; leave that as it is.");
        }
        return 0;
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
