package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.heat.CalibrationReport;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits constants of the heat model to bench measurements and drafts the change they would make. */
@Command(
        name = "calibrate",
        description = "Fit constants of the heat model to a laboratory's own bench measurements.",
        footer = {"", "%nA fit is a proposal for governance, not for use.", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CalibrateCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "BENCH.csv",
            description = "The measurements, one row a stretch of vein; - reads standard input."
                    + " knowledge/demo/bench.csv shows the columns.")
    private String file = "";

    @Option(
            names = "--free",
            paramLabel = "ID,ID,...",
            split = ",",
            description = "Constants that may move, each inside its range (default: those of local standing that move a"
                    + " depth of the file).")
    private List<String> free = List.of();

    @Option(
            names = "--out",
            paramLabel = "FILE.yaml",
            description = "Write the change the fit would propose; an existing file is never touched.")
    private Optional<String> proposal = Optional.empty();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    CalibrateCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        Optional<OutputFile> out = proposal.map(OutputFile::fresh);
        Tunica tunica = Tunica.shipped();
        CalibrationReport report = tunica.heat().calibrate(file, InputFile.read(file), free);
        spec.commandLine().getOut().print(new CalibrationText(tunica.knowledge(), width.columns()).of(report));
        if (out.isPresent()) {
            out.get().write(tunica.heat().propose(report).toYaml().getBytes(StandardCharsets.UTF_8));
            spec.commandLine().getOut().println("Proposal written to " + proposal.orElseThrow() + ".");
        }
        return 0;
    }
}
