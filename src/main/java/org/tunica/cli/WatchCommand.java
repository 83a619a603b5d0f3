package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.plan.Advice;
import org.tunica.watching.WatchReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Watches the rules in use. */
@Command(
        name = "watch",
        description = {
            "Look at the rules in use: how often each speaks now and before, how often cards were set aside and why, which"
                    + " reviews fall due, which numbers nobody checked.",
            "It reads the advices and the feedback that are kept, and changes nothing."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class WatchCommand implements Callable<Integer> {
    private static final int MOST_SHOWN = 20;

    @Mixin
    private DataPlace data = new DataPlace();

    @Option(names = "--days", defaultValue = "30", paramLabel = "N", description = "Days up to now (default: 30).")
    private int days;

    @Option(
            names = "--before",
            defaultValue = "90",
            paramLabel = "N",
            description = "Days before those, to compare with (default: 90).")
    private int before;

    @Option(names = "--all", description = "Show every rule and number, not the first twenty.")
    private boolean all;

    @Option(names = "--json", description = "As tunica-watch/1.")
    private boolean json;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    WatchCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        try (OpenReleases open = OpenReleases.at(data)) {
            WatchReport report = open.watch().look(open.by(), days, before);
            int most = all ? Integer.MAX_VALUE : MOST_SHOWN;
            spec.commandLine()
                    .getOut()
                    .print(json ? report.toJson() : new WatchText(report, width.columns(), most).all());
        }
        return ExitCode.OK;
    }
}
