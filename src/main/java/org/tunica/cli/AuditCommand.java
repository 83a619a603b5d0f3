package org.tunica.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.invented.InventedLibrary;
import org.tunica.outcomes.Audit;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.EachCase;
import org.tunica.picture.WindowPicture;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Audits the results of past cases. */
@Command(
        name = "audit",
        description =
                "How many treated veins were closed when, how long they stayed so and what went wrong, by technique, site and"
                        + " year; and whether that is what published rates led to expect.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class AuditCommand implements Callable<Integer> {
    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description = "The folder of the case base (default: with --data the past cases released there, else a"
                    + " library of made-up cases).")
    private Optional<String> folder = Optional.empty();

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Option(names = "--site", paramLabel = "SITE", description = "Only cases of this site, a pseudonym.")
    private Optional<String> site = Optional.empty();

    @Option(names = "--technique", paramLabel = "ID", description = "Only this technique.")
    private Optional<String> technique = Optional.empty();

    @Option(names = "--from", paramLabel = "YEAR", description = "Only cases treated in this year or later.")
    private Optional<Integer> from = Optional.empty();

    @Option(names = "--to", paramLabel = "YEAR", description = "Only cases treated in this year or earlier.")
    private Optional<Integer> to = Optional.empty();

    @Option(
            names = "--compare",
            paramLabel = "ID",
            split = ",",
            description = "Two techniques, separated by a comma, whose curves are compared (log-rank).")
    private List<String> compare = List.of();

    @Option(names = "--json", description = "Print as JSON (tunica-audit/1).")
    private boolean json;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write it with charts as PDF.")
    private Optional<String> pdf = Optional.empty();

    @Option(names = "--html", paramLabel = "FILE", description = "Write it with charts as a page for a browser.")
    private Optional<String> html = Optional.empty();

    @Option(names = "--svg", paramLabel = "FOLDER", description = "Write each chart into a folder that is there.")
    private Optional<String> svg = Optional.empty();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    AuditCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            tell(
                    consulted.tunica(),
                    audit(consulted, new AuditQuestion(site, technique, year(from), year(to), compare)));
        }
        return 0;
    }

    private void tell(Tunica tunica, Audit audit) {
        if (pdf.isEmpty() && html.isEmpty() && svg.isEmpty()) {
            spec.commandLine()
                    .getOut()
                    .print(
                            json
                                    ? tunica.toJson(audit)
                                    : new PaperText(width.columns())
                                            .of(tunica.audits().text(audit)));
            return;
        }
        pdf.ifPresent(file ->
                OutputFile.replacing(file).write(tunica.toPdf(tunica.audits().page(audit))));
        html.ifPresent(file -> OutputFile.replacing(file)
                .write(tunica.toHtml(tunica.audits().page(audit)).getBytes(StandardCharsets.UTF_8)));
        svg.ifPresent(folder -> tunica.audits()
                .charts(audit, WindowPicture.USUAL_WIDTH_PX)
                .forEach((name, picture) ->
                        OutputFile.replacing(folder + "/" + name + ".svg").write(picture.svg())));
    }

    private Audit audit(Consulted consulted, AuditQuestion question) {
        PrintWriter err = spec.commandLine().getErr();
        Tunica tunica = consulted.tunica();
        if (folder.isPresent()) {
            CaseBase base = tunica.pastCases().caseBase(CasesFolder.path(folder.get()));
            try (ProgressBar bar = ProgressBar.atTerminal("reading", err)) {
                return tunica.audits().audit(taker -> base.each(taker, bar), question);
            }
        }
        EachCase cases = consulted
                .pastCases()
                .map(desk -> DataHouse.each(desk, err))
                .orElseGet(() -> tunica.pastCases()
                        .inventedLibrary(InventedLibrary.USUAL_SEED)
                        .cases(InventedLibrary.USUAL_COUNT)::forEach);
        return tunica.audits().audit(cases, question);
    }

    private static OptionalInt year(Optional<Integer> year) {
        return year.isPresent() ? OptionalInt.of(year.get()) : OptionalInt.empty();
    }
}
