package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.paper.Document;
import org.tunica.paper.Lettering;
import org.tunica.paper.Paper;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a sheet for the patient. */
@Command(
        name = "sheet",
        description =
                "Write a sheet for the patient in plain words: the options that can be talked about or the one chosen, the"
                        + " day, what studies found as natural frequencies. Without --out it is printed as text.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class SheetCommand implements Callable<Integer> {
    @Parameters(paramLabel = "CASE.json", description = "The case; - reads standard input.")
    private String file = "";

    @Option(
            names = "--chosen",
            paramLabel = "REF=TECHNIQUE",
            description = "What the specialist chose for a segment; may be given for each.")
    private Map<String, String> chosen = new LinkedHashMap<>();

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Option(names = "--out", paramLabel = "FILE", description = "Write to a file that ends in .html or .pdf.")
    private String out = "";

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    SheetCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        String name = out.toLowerCase(Locale.ROOT);
        boolean pdf = name.endsWith(".pdf");
        if (!out.isEmpty() && !pdf && !name.endsWith(".html")) {
            throw new ParameterException(spec.commandLine(), "--out must end in .html or .pdf, is " + out);
        }
        byte[] bytes = InputFile.read(file);
        Document sheet = sheet(bytes);
        if (out.isEmpty()) {
            spec.commandLine().getOut().print(new PaperText(width.columns()).of(sheet));
        } else {
            OutputFile.replacing(out)
                    .write(
                            pdf
                                    ? Paper.pdf(sheet, Lettering.LARGE)
                                    : Paper.xhtml(sheet, Lettering.LARGE).getBytes(StandardCharsets.UTF_8));
        }
        return 0;
    }

    private Document sheet(byte[] bytes) {
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            Tunica tunica = consulted.tunica();
            return tunica.treatments().sheet(tunica.readCase(file, bytes), chosen);
        }
    }
}
