package org.tunica.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.fhir.FhirTranslator;
import org.tunica.fhir.LocalCodes;
import org.tunica.fhir.RecordWriter;
import org.tunica.fhir.Translated;
import org.tunica.plan.Advice;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads a patient's record as a case. */
@Command(
        name = "fhir",
        description =
                "Read a patient's record (FHIR R4) as a case and print it; what of the record was not used goes to the error"
                        + " output. Nothing is guessed and nothing is stored.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class FhirCommand implements Callable<Integer> {
    @ArgGroup(multiplicity = "1")
    private What what = new What();

    /** What to print. */
    static final class What {
        @Parameters(paramLabel = "BUNDLE.json", description = "The record; - reads standard input.")
        private String record = "";

        @Option(
                names = "--example-of",
                paramLabel = "CASE.json",
                description = "Print instead the record from which this case could have come.")
        private String example = "";

        @Option(names = "--codes", description = "Print instead our own code systems as a Bundle.")
        private boolean codes;
    }

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private SiteFile site = new SiteFile();

    @Option(names = "--ref", description = "Name of the case, not of a person (default: ${DEFAULT-VALUE}).")
    private String ref = "from-record";

    @Spec
    private CommandSpec spec;

    FhirCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            print(consulted.tunica(), spec.commandLine().getOut());
        }
        return 0;
    }

    private void print(Tunica tunica, PrintWriter out) {
        if (what.codes) {
            out.println(LocalCodes.bundle(tunica).toPrettyString());
        } else if (!what.example.isEmpty()) {
            out.println(RecordWriter.bundle(
                            tunica,
                            tunica.readCase(what.example, InputFile.read(what.example)),
                            site.day().toString())
                    .toPrettyString());
        } else {
            translate(tunica, out);
        }
    }

    private void translate(Tunica tunica, PrintWriter out) {
        byte[] record = InputFile.readRecord(what.record);
        Translated read = new FhirTranslator(tunica, site.read(tunica)).translate(what.record, record, site.day(), ref);
        out.print(tunica.toJson(read.caseFile()));
        PrintWriter err = spec.commandLine().getErr();
        if (!read.unused().isEmpty()) {
            err.println("Not used of the record:");
            read.unused()
                    .forEach(one -> err.println("  " + new Fault(one.path(), one.resource() + ": " + one.reason())));
        }
    }
}
