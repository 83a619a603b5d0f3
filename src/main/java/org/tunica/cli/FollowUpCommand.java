package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.treatment.Treatment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how it went after a closure. */
@Command(
        name = "followup",
        description =
                "Put a plan and what was seen afterwards together: how each segment stands by the definition named, the class"
                        + " of a clot, complications, the change of severity, the scan due next.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class FollowUpCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "PLAN.json", description = "The plan, as plan --json wrote it.")
    private String plan = "";

    @Parameters(index = "1", paramLabel = "FOLLOWUP.json", description = "What was seen; - reads standard input.")
    private String followUp = "";

    @Option(names = "--json", description = "Print as JSON (tunica-treatment/1).")
    private boolean json;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "Width of the text, 60 to 160 (default: that of the terminal).")
    private int width = TextWidth.ofTerminal();

    @Spec
    private CommandSpec spec;

    FollowUpCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        TextWidth.check(width, spec);
        byte[] planned = InputFile.read(plan);
        byte[] seen = InputFile.read(followUp);
        Tunica tunica = Tunica.shipped();
        Treatment treatment = tunica.treatment(plan, planned, followUp, seen);
        spec.commandLine()
                .getOut()
                .print(json ? tunica.toJson(treatment) : new FollowUpText(tunica.knowledge(), width).of(treatment));
        return 0;
    }
}
