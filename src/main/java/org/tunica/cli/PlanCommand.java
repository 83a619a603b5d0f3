package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;
import org.tunica.session.SessionPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans the sessions of a case. */
@Command(
        name = "plan",
        description =
                "Choose one technique for every segment of a case, so that drugs, foam, time, generator and position"
                        + " are shared within their limits; split into sessions when one cannot hold it.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    @Parameters(paramLabel = "CASE.json", description = "The case; - reads standard input.")
    private String file = "";

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Option(names = "--json", description = "Print the plan as JSON (tunica-plan/1).")
    private boolean json;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    PlanCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        byte[] bytes = InputFile.read(file);
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Tunica tunica = consulted.tunica();
            CaseFile caseFile = tunica.readCase(file, bytes);
            SessionPlan plan = tunica.plan(caseFile);
            spec.commandLine()
                    .getOut()
                    .print(json ? tunica.toJson(plan) : new PlanText(tunica.knowledge(), width.columns()).of(plan));
        }
        return 0;
    }
}
