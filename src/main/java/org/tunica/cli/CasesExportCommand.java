package org.tunica.cli;

import java.io.BufferedWriter;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.pastcases.CaseFilter;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes past cases of a case base to a file. */
@Command(
        name = "export",
        description = "Write past cases as JSON Lines, in the order of the base.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesExportCommand implements Callable<Integer> {
    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Option(names = "--to", paramLabel = "FILE", description = "The file to write; without it the cases are printed.")
    private @Nullable String to;

    @Option(
            names = "--technique",
            paramLabel = "ID",
            description = "Only cases with a segment treated by it, such as laser-1470-radial.")
    private @Nullable String technique;

    @Option(names = "--year", paramLabel = "YEAR", description = "Only cases of that year.")
    private @Nullable Integer year;

    @Spec
    private CommandSpec spec;

    CasesExportCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        try (PastCaseHouse house = cases.open(err);
                ProgressBar bar = ProgressBar.atTerminal("exporting", err)) {
            CaseFilter filter = filter(house.tunica());
            if (to == null) {
                house.export(filter, spec.commandLine().getOut(), bar);
            } else {
                long[] written = {0};
                OutputFile.replacing(to).write(out -> {
                    BufferedWriter writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
                    written[0] = house.export(filter, writer, bar);
                    writer.flush();
                });
                spec.commandLine().getOut().print(CasesText.exported(written[0], to));
            }
        }
        return 0;
    }

    private CaseFilter filter(Tunica tunica) {
        if (technique != null && !tunica.knowledge().techniqueIds().contains(technique)) {
            throw new FaultyInput(
                    "input",
                    List.of(new Fault(
                            "technique " + technique,
                            "there is no such technique"
                                    + Nearest.hint(technique, tunica.knowledge().techniqueIds()))));
        }
        return new CaseFilter(
                Optional.ofNullable(technique), year == null ? OptionalInt.empty() : OptionalInt.of(year));
    }
}
