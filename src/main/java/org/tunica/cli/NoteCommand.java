package org.tunica.cli;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.paper.Document;
import org.tunica.plan.Advice;
import org.tunica.session.SessionPlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the procedure note of a session. */
@Command(
        name = "note",
        description = {
            "Write the procedure note of a session: what was delivered to each segment, held against the plan, with doses"
                    + " against their limits and what the heat model says of the heat really given. A record that"
                    + " contradicts itself is refused with both numbers."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class NoteCommand implements Callable<Integer> {
    /** How the note is printed. */
    enum Format {
        TEXT,
        HTML,
        PDF;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Parameters(index = "0", paramLabel = "PLAN.json", description = "The plan, as plan --json prints it.")
    private String planFile = "";

    @Parameters(
            index = "1",
            paramLabel = "DELIVERED.json",
            description = "What was delivered (tunica-delivered/1); - reads standard input.")
    private String deliveredFile = "";

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "One of: ${COMPLETION-CANDIDATES} (default: text).")
    private Format format = Format.TEXT;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to a file; one that is there is replaced. A PDF goes to a file only.")
    private Optional<String> out = Optional.empty();

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    NoteCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        if (format == Format.PDF && out.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--format pdf needs --out FILE");
        }
        Optional<OutputFile> target = out.map(OutputFile::replacing);
        byte[] plan = InputFile.read(planFile);
        byte[] delivered = InputFile.read(deliveredFile);
        try (Consulted consulted = rules.open()) {
            write(consulted, plan, delivered, target);
        }
        return 0;
    }

    private void write(Consulted consulted, byte[] planned, byte[] delivered, Optional<OutputFile> target) {
        Tunica tunica = consulted.tunica();
        SessionPlan plan = consulted.vouched(
                tunica.readPlan(planFile, planned), spec.commandLine().getErr());
        Document page = tunica.treatments()
                .note(plan, tunica.treatments().readDelivered(deliveredFile, delivered))
                .page();
        if (target.isPresent()) {
            target.get().write(bytes(tunica, page));
        } else {
            spec.commandLine().getOut().print(text(tunica, page));
        }
    }

    private byte[] bytes(Tunica tunica, Document page) {
        return format == Format.PDF ? tunica.toPdf(page) : text(tunica, page).getBytes(StandardCharsets.UTF_8);
    }

    private String text(Tunica tunica, Document page) {
        return format == Format.HTML ? tunica.toHtml(page) : new PaperText(width.columns()).of(page);
    }
}
