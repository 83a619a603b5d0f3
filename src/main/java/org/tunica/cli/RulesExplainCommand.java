package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Why a technique stands as it does, rule by rule. */
@Command(
        name = "explain",
        description = "Why a technique stands as it does for a segment: which rules spoke and what they met, which came"
                + " close, and which would have spoken but for one condition.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class RulesExplainCommand implements Callable<Integer> {
    @Parameters(paramLabel = "CASE.json", description = "The case; - reads standard input.")
    private String file = "";

    @Option(
            names = "--option",
            paramLabel = "REF/TECHNIQUE",
            required = true,
            description = "Segment and technique, such as L1/laser-1470-radial.")
    private String option = "";

    @Option(names = "--all", description = "Also list what a matter of words or history keeps quiet.")
    private boolean all;

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    RulesExplainCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        // a technique's id holds no slash, a segment's name might
        int slash = option.lastIndexOf('/');
        if (slash < 1 || slash == option.length() - 1) {
            throw new ParameterException(
                    spec.commandLine(), "--option must be REF/TECHNIQUE, such as L1/laser-1470-radial, is " + option);
        }
        byte[] bytes = InputFile.read(file);
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Tunica tunica = consulted.tunica();
            CaseFile caseFile = tunica.readCase(file, bytes);
            String text = new ExplanationText(width.columns(), all)
                    .of(tunica.explain(caseFile, option.substring(0, slash), option.substring(slash + 1)));
            spec.commandLine().getOut().print(text);
        }
        return 0;
    }
}
