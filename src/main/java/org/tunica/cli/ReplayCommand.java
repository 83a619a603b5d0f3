package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Replays;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import org.tunica.replay.Replay;
import org.tunica.replay.ReplayRequest;
import org.tunica.replay.ReplayResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Replays cases under two releases. */
@Command(
        name = "replay",
        description =
                "What would be advised otherwise if a draft were in force: every case under the release in force and under"
                        + " the draft, the gravest changes first, and which rules turned. The demonstration cases are always"
                        + " among the cases. A replay that was ended goes on where it was when it is started again. With"
                        + " --shared several programs, on one machine or on many, do one replay together: start the same"
                        + " command in each; every one prints the whole result.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ReplayCommand implements Callable<Integer> {
    private static final String WORK = "replays";

    @Option(
            names = "--draft",
            required = true,
            paramLabel = "PATH",
            description = "A folder or .zip that holds rules/ and knowledge/.")
    private String draft = "";

    @Option(
            names = "--against",
            paramLabel = "PATH",
            description = "The release it is held against (default: the one shipped with the program).")
    private Optional<String> against = Optional.empty();

    @Option(
            names = "--data",
            paramLabel = "FOLDER",
            description = "Hold it against the release in force there (a folder, or a jdbc:postgresql: URL).")
    private Optional<String> place = Optional.empty();

    @Option(names = "--cases", paramLabel = "FOLDER", description = "The past cases of a case base.")
    private Optional<String> folder = Optional.empty();

    @Option(
            names = "--invented",
            paramLabel = "N[:SEED]",
            converter = InventedCount.Reader.class,
            description = "So many INVENTED cases (default seed: 1).")
    private Optional<InventedCount> invented = Optional.empty();

    @Option(
            names = "--kept",
            paramLabel = "URL",
            description = "The past cases released at a place (a folder, or a jdbc:postgresql: URL).")
    private Optional<String> kept = Optional.empty();

    @Option(
            names = "--shared",
            paramLabel = "URL",
            description =
                    "Share the work by way of this database (jdbc:postgresql:): each program takes parts nobody is at; those"
                            + " of a program that died are taken again after a quarter of a minute.")
    private Optional<String> shared = Optional.empty();

    @Option(names = "--demo", description = "The demonstration cases alone.")
    private boolean demo;

    @Option(
            names = "--work",
            paramLabel = "FOLDER",
            description =
                    "Where finished parts and answers of the heat model are kept, to go on from (default: the folder"
                            + " replays in that of --cases; else nothing is kept).")
    private Optional<String> work = Optional.empty();

    @Option(names = "--threads", paramLabel = "N", description = "How many at a time (default: one a core).")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(names = "--json", description = "Print as JSON (tunica-replay/1).")
    private boolean json;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write it as PDF.")
    private Optional<String> pdf = Optional.empty();

    @Option(names = "--html", paramLabel = "FILE", description = "Write it as a page for a browser.")
    private Optional<String> html = Optional.empty();

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "Width of the text, 60 to 160 (default: that of the terminal).")
    private int width = TextWidth.ofTerminal();

    @Spec
    private CommandSpec spec;

    ReplayCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        check();
        if (place.isEmpty()) {
            replay(against.map(ReplayCommand::release).orElseGet(Tunica::shipped));
            return 0;
        }
        try (Consulted inForce = Consulted.at(place.get(), Optional.empty())) {
            inForce.tell(spec.commandLine().getErr());
            replay(inForce.tunica());
        }
        return 0;
    }

    private void replay(Tunica before) {
        Replays replays = before.against(release(draft));
        Optional<Path> workPlace = work.map(ReplayCommand::path)
                .or(() -> folder.map(cases -> path(cases).resolve(WORK)));
        try (ReplayMeans means = ReplayMeans.of(workPlace, kept, shared)) {
            print(replays, replayed(before, replays, means));
        }
    }

    private void check() {
        TextWidth.check(width, spec);
        if (folder.isEmpty() && kept.isEmpty() && invented.isEmpty() && !demo) {
            throw new ParameterException(spec.commandLine(), "Say which cases: --cases, --kept, --invented or --demo");
        }
        if (place.isPresent() && against.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Say --data or --against, not both");
        }
        if (threads < 1) {
            throw new ParameterException(spec.commandLine(), "--threads must be 1 or more, is " + threads);
        }
    }

    private static Tunica release(String name) {
        return Tunica.of(RuleFolder.of(name).bundle());
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new FaultyInput("input", List.of(new Fault(name, "is not a folder name here: " + e.getReason())));
        }
    }

    private ReplayResult replayed(Tunica before, Replays replays, ReplayMeans means) {
        ReplayRequest request = new ReplayRequest(
                folder.map(cases -> before.pastCases().caseBase(path(cases))),
                means.kept(),
                invented.map(made -> new ReplayRequest.Invented(made.seed(), made.count())),
                means.work(),
                means.shared(),
                threads);
        Replay replay = replays.prepare(request);
        new HeatWaiting(spec.commandLine().getErr(), threads).tell(replay);
        try (ProgressBar bar =
                ProgressBar.atTerminal("replaying", spec.commandLine().getErr())) {
            return replay.run(bar);
        }
    }

    private void print(Replays replays, ReplayResult result) {
        if (pdf.isEmpty() && html.isEmpty()) {
            spec.commandLine()
                    .getOut()
                    .print(json ? replays.toJson(result) : new PaperText(width).of(replays.page(result)));
            return;
        }
        Tunica writer = Tunica.shipped();
        pdf.ifPresent(file -> OutputFile.replacing(file).write(writer.toPdf(replays.page(result))));
        html.ifPresent(file -> OutputFile.replacing(file)
                .write(writer.toHtml(replays.page(result)).getBytes(StandardCharsets.UTF_8)));
    }
}
