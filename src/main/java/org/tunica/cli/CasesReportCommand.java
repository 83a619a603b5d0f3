package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.pastcases.AnonymityReport;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells how well nobody can be found in a base. */
@Command(
        name = "report",
        description =
                "Tell the data protection officer how well nobody can be found in a base: k, distinct l, small groups, and what"
                        + " telling less would cost and gain.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesReportCommand implements Callable<Integer> {
    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Option(names = "--json", description = "Print as JSON (tunica-anonymity/1), with every recoding.")
    private boolean json;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    CasesReportCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        try (PastCaseHouse house = cases.open(spec.commandLine().getErr())) {
            AnonymityReport report = house.tunica().pastCases().anonymityReport(house.released());
            spec.commandLine()
                    .getOut()
                    .print(json ? house.tunica().toJson(report) : new AnonymityText(width.columns()).of(report));
        }
        return 0;
    }
}
