package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.knowledge.Bundle;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Builds a release. */
@Command(
        name = "build",
        description = {
            "Put a release together from a folder of rules and knowledge and keep it as a draft.",
            "The rules are checked first. A replay of exactly these rules must be given; scenarios beside them go in."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ReleaseBuildCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(paramLabel = "DIR", description = "A folder with rules/ and knowledge/, perhaps features/.")
    private String folder = "";

    @Option(
            names = "--number",
            required = true,
            paramLabel = "X.Y.Z",
            description = "Its version: X when somebody"
                    + " would get another recommendation, Y when something was added, Z when only words changed.")
    private String version = "";

    @Option(names = "--title", required = true, paramLabel = "WORDS", description = "What is new, in a sentence.")
    private String title = "";

    @Option(
            names = "--author",
            required = true,
            paramLabel = "NAME",
            description = "Who wrote what is new; several are given one by one.")
    private List<String> authors = new ArrayList<>();

    @Option(
            names = "--change",
            required = true,
            paramLabel = "NNNN",
            description = "Number of a change record that is new; several are given one by one.")
    private List<String> changes = new ArrayList<>();

    @Option(
            names = "--replay",
            required = true,
            paramLabel = "FILE.json",
            description = "The replay (tunica-replay/1).")
    private String replay = "";

    @Option(names = "--review-by", required = true, paramLabel = "DAY", description = "When to look at it again.")
    private LocalDate reviewBy = LocalDate.EPOCH;

    @Option(names = "--effective-from", paramLabel = "DAY", description = "First day it may be in force, UTC.")
    private Optional<LocalDate> effectiveFrom = Optional.empty();

    @Option(names = "--effective-to", paramLabel = "DAY", description = "Last day it may be in force, UTC.")
    private Optional<LocalDate> effectiveTo = Optional.empty();

    @Spec
    private CommandSpec spec;

    ReleaseBuildCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        RuleFolder rules = RuleFolder.of(folder);
        Bundle bundle = rules.bundle();
        ReplayReport report = new ReplayReport(new String(InputFile.readRecord(replay), StandardCharsets.UTF_8));
        SemanticVersion number = SemanticVersion.of(version);
        ReleaseIntent intent = new ReleaseIntent(number, title, authors, changes, effectiveFrom, effectiveTo, reviewBy);
        try (OpenReleases open = OpenReleases.at(data)) {
            ReleaseFiles files = open.press().of(intent, bundle, rules.features(), report);
            open.desk().keep(open.by(), files);
            spec.commandLine().getOut().println(open.line(version));
            files.manifest()
                    .leftOut()
                    .forEach(left -> spec.commandLine().getOut().println("Not in it: " + left + "."));
        }
        return 0;
    }
}
