package org.tunica.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.Treatment;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells how it went after a closure. */
@Command(
        name = "followup",
        description =
                "Put a plan, what was delivered and what was seen afterwards together: how each segment stands by the definition named, the class"
                        + " of a clot, complications, the change of severity, the scan due next.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class FollowUpCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "PLAN.json [DELIVERED.json ...] FOLLOWUP.json",
            hideParamSyntax = true,
            arity = "2..*",
            description = "The plan as plan --json wrote it, records of what was delivered, and last what was seen.")
    private List<String> files = List.of();

    @Option(names = "--json", description = "Print as JSON (tunica-treatment/1).")
    private boolean json;

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    FollowUpCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        int last = files.size() - 1;
        byte[] plan = InputFile.read(files.get(0));
        byte[] seen = InputFile.read(files.get(last));
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            tell(consulted.tunica(), plan, seen);
        }
        return 0;
    }

    private void tell(Tunica tunica, byte[] plan, byte[] seen) {
        int last = files.size() - 1;
        List<DeliveredSession> delivered = files.subList(1, last).stream()
                .map(file -> tunica.treatments().readDelivered(file, InputFile.read(file)))
                .toList();
        Treatment treatment = tunica.treatments()
                .treatment(
                        tunica.treatments().readTreated(files.get(0), plan),
                        delivered,
                        tunica.treatments().readFollowUp(files.get(last), seen));
        spec.commandLine()
                .getOut()
                .print(
                        json
                                ? tunica.toJson(treatment)
                                : new FollowUpText(tunica.knowledge(), width.columns()).of(treatment));
    }
}
