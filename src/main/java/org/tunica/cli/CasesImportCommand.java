package org.tunica.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings past cases of a file into a case base. */
@Command(
        name = "import",
        description =
                "Bring past cases into a case base, all of a file or none; faulty lines are told by their numbers.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesImportCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FILE",
            description = "JSON Lines, one past case (tunica-past/1) on each line, plain or packed with gzip.")
    private String file = "";

    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Spec
    private CommandSpec spec;

    CasesImportCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        try (PastCaseHouse house = cases.open(err);
                ProgressBar bar = ProgressBar.atTerminal("importing", err)) {
            spec.commandLine().getOut().print(house.bringIn(CasesFolder.path(file), bar));
        }
        return 0;
    }
}
