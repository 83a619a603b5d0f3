package org.tunica.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;
import org.tunica.similar.CaseLibrary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the advice for a case. */
@Command(
        name = "advise",
        description = "Rank every technique for every segment of a case and say why.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class AdviseCommand implements Callable<Integer> {
    @Parameters(paramLabel = "CASE.json", description = "The case; - reads standard input.")
    private String file = "";

    @Option(names = "--json", description = "Print the advice as JSON (tunica-advice/1).")
    private boolean json;

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description = "Show the past segments of a case base that are most alike beside each segment.")
    private Optional<Path> cases = Optional.empty();

    @Option(names = "--why", description = "Add every reason with its rule, source, standing and limits.")
    private boolean why;

    @Option(
            names = "--confirm",
            description =
                    "Seek heat settings anew for other walls, lumens, depths and gaps that might turn the ranking; may take a"
                            + " minute a segment.")
    private boolean confirm;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    AdviseCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        byte[] bytes = InputFile.read(file);
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Advice advised = answer(consulted.tunica(), bytes);
            consulted.shadow(bytes, advised);
        }
        return 0;
    }

    /** Prints the advice, and gives it back without what stands beside it. */
    private Advice answer(Tunica tunica, byte[] bytes) {
        CaseFile caseFile = tunica.readCase(file, bytes);
        Advice advised = confirm ? tunica.adviseConfirmed(caseFile) : tunica.advise(caseFile);
        Advice advice = cases.isEmpty() ? advised : withCases(tunica, caseFile, advised);
        String text =
                json ? tunica.toJson(advice) : new AdviceText(tunica.knowledge(), width.columns(), why).of(advice);
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return advised;
    }

    private Advice withCases(Tunica tunica, CaseFile caseFile, Advice advice) {
        try (CaseLibrary library = tunica.likeness().cases(cases.orElseThrow())) {
            return tunica.likeness().withSimilar(advice, caseFile, library);
        }
    }
}
