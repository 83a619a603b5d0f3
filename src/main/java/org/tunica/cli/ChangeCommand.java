package org.tunica.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.proposal.ChangeChecks;
import org.tunica.proposal.Check;
import org.tunica.proposal.CheckedChange;
import org.tunica.proposal.WorkingCopy;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Changes of rules and numbers, from the working copy until they are handed in. */
@Command(
        name = "change",
        description = {
            "Change rules and numbers in a working copy, see what differs, have it checked, hand it in.",
            "In order: start, edit the files, reason, check, submit; then replay and release build."
        },
        footer = {"", Advice.CAUTION},
        subcommands = {ChangeStartCommand.class, ChangeTakeCommand.class},
        mixinStandardHelpOptions = true)
final class ChangeCommand {
    private static final String DIR = "The folder of the working copy.";

    @Spec
    private CommandSpec spec;

    ChangeCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(
            name = "reason",
            description =
                    "Write why into the change record, and list there what the files changed. Remarks in the record"
                            + " are lost.",
            mixinStandardHelpOptions = true)
    int reason(
            @Parameters(paramLabel = "DIR", description = DIR) String folder,
            @Parameters(paramLabel = "WORDS", description = "Why, in your words.") String words) {
        return record(folder, Optional.of(words));
    }

    @Command(
            name = "record",
            description = "List in the change record what the files changed, and leave its reason.",
            mixinStandardHelpOptions = true)
    int record(@Parameters(paramLabel = "DIR", description = DIR) String folder) {
        return record(folder, Optional.empty());
    }

    private int record(String folder, Optional<String> reason) {
        RuleFolder named = RuleFolder.of(folder);
        WorkingCopy copy = WorkingCopy.in(named.path());
        spec.commandLine()
                .getOut()
                .print(named.reading(() -> copy.fillRecord(reason)).toYaml());
        return ExitCode.OK;
    }

    @Command(
            name = "show",
            description = "Say in English what differs from what the change began with.",
            mixinStandardHelpOptions = true)
    int show(
            @Parameters(paramLabel = "DIR", description = DIR) String folder,
            @Option(names = "--lines", description = "Show the files line by line instead.") boolean lines,
            @Mixin TextWidth width) {
        width.check();
        CheckedChange change = checked(WorkingCopy.in(RuleFolder.of(folder).path()));
        return print(lines ? change.lines() : new ChangeText(width.columns()).differences(change));
    }

    @Command(
            name = "check",
            description = "Check the change from end to end; each check says pass, warn or bar.",
            exitCodeListHeading = "%nExit codes:%n",
            exitCodeList = {"0:nothing bars it", "2:a check bars it"},
            mixinStandardHelpOptions = true)
    int check(
            @Parameters(paramLabel = "DIR", description = DIR) String folder,
            @Option(names = "--json", description = "As tunica-change-check/1.") boolean json,
            @Mixin TextWidth width) {
        width.check();
        CheckedChange change = checked(WorkingCopy.in(RuleFolder.of(folder).path()));
        print(json ? change.toJson() : new ChangeText(width.columns()).all(change));
        return change.result() == Check.Result.BAR ? ExitCode.USAGE : ExitCode.OK;
    }

    @Command(
            name = "submit",
            description = "Check the change and hand it in with its checks.",
            mixinStandardHelpOptions = true)
    int submit(@Mixin DataPlace data, @Parameters(paramLabel = "DIR", description = DIR) String folder) {
        WorkingCopy copy = WorkingCopy.in(RuleFolder.of(folder).path());
        CheckedChange change = checked(copy);
        try (OpenReleases open = OpenReleases.at(data)) {
            return print(ChangeText.line(open.changes().submit(open.by(), copy, change)) + "\n");
        }
    }

    @Command(name = "withdraw", description = "Take back a change that is in review.", mixinStandardHelpOptions = true)
    int withdraw(@Mixin DataPlace data, @Parameters(paramLabel = "NUMBER") String number, @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            return print(ChangeText.line(open.changes().withdraw(open.by(), number, because.text())) + "\n");
        }
    }

    @Command(name = "list", description = "Show every change that was handed in.", mixinStandardHelpOptions = true)
    int list(@Mixin DataPlace data) {
        StringBuilder out = new StringBuilder();
        try (OpenReleases open = OpenReleases.at(data)) {
            open.changes()
                    .all()
                    .forEach(change -> out.append(ChangeText.line(change)).append('\n'));
        }
        return print(out.isEmpty() ? "No change was handed in here.\n" : out.toString());
    }

    @Command(
            name = "read",
            description = "Show a change that was handed in, with its checks as they were then.",
            mixinStandardHelpOptions = true)
    int read(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "NUMBER") String number,
            @Option(names = "--json", description = "As tunica-change-check/1.") boolean json,
            @Mixin TextWidth width) {
        width.check();
        try (OpenReleases open = OpenReleases.at(data)) {
            String document = open.changes().one(number).document();
            return print(
                    json
                            ? document
                            : new ChangeText(width.columns()).all(CheckedChange.read("change " + number, document)));
        }
    }

    private static CheckedChange checked(WorkingCopy copy) {
        LocalDate today = LocalDate.now(ZoneOffset.UTC);
        return new ChangeChecks(copy, bundle -> Tunica.of(bundle).review(), today).run();
    }

    private int print(String text) {
        spec.commandLine().getOut().print(text);
        return ExitCode.OK;
    }
}
