package org.tunica.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Likeness;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.archive.Released;
import org.tunica.pastcases.PastCase;
import org.tunica.plan.Advice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.LeftOut;
import org.tunica.similar.SimilarCases;
import org.tunica.similar.SimilarFilter;
import org.tunica.similar.SimilarRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Finds past segments like those of a case. */
@Command(
        name = "similar",
        description =
                "Find the past segments most like those of a case, say why, and tell what was done and how it went. Words"
                        + " narrow the search to notes that hold each of them; without a case they alone are searched.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class SimilarCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "CASE.json",
            arity = "0..1",
            description = "The case; - reads standard input. May be left out when --words is given.")
    private Optional<String> file = Optional.empty();

    @Option(names = "--segment", paramLabel = "REF", description = "One segment of the case alone.")
    private Optional<String> segment = Optional.empty();

    @Option(names = "--technique", paramLabel = "ID", description = "Past segments treated with this technique alone.")
    private Optional<String> technique = Optional.empty();

    @Option(
            names = "--outcome",
            description = "Past segments that were closed, or were not, at their last scan: ${COMPLETION-CANDIDATES}.")
    private Optional<SimilarFilter.Outcome> outcome = Optional.empty();

    @Option(names = "--words", paramLabel = "WORDS", description = "Past cases whose notes hold each of these words.")
    private Optional<String> words = Optional.empty();

    @Option(names = "--site", paramLabel = "SITE", description = "Past cases of one clinic, by its pseudonym.")
    private Optional<String> site = Optional.empty();

    @Option(names = "--top", paramLabel = "NUMBER", description = "How many to list, 1 to 1000 (default: 10).")
    private int top = SimilarRequest.USUAL_MOST;

    @Option(
            names = "--cases",
            paramLabel = "FOLDER",
            description = "The case base (default: with --data the past cases released there, else a library of"
                    + " made-up cases).")
    private Optional<Path> cases = Optional.empty();

    @Mixin
    private RulesInUse rules = new RulesInUse();

    @Mixin
    private SharedIndex shared = new SharedIndex();

    @Option(names = "--json", description = "Print as JSON (tunica-similar/1).")
    private boolean json;

    @Option(names = "--why", description = "Show what each attribute gives.")
    private boolean why;

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    SimilarCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        check();
        Optional<byte[]> bytes = file.map(InputFile::read);
        SimilarFilter filter = new SimilarFilter(
                technique, outcome, Optional.empty(), site, file.isPresent() ? words : Optional.empty());
        try (Consulted consulted = rules.open()) {
            consulted.tell(spec.commandLine().getErr());
            tell(consulted, bytes, new SimilarRequest(segment, filter, top));
        }
        return 0;
    }

    private void tell(Consulted consulted, Optional<byte[]> bytes, SimilarRequest request) {
        Tunica tunica = consulted.tunica();
        try (CaseLibrary library = library(consulted)) {
            SimilarCases similar = bytes.isPresent()
                    ? tunica.likeness().similar(tunica.readCase(file.orElseThrow(), bytes.get()), library, request)
                    : tunica.likeness().similar(words.orElseThrow(), library, request);
            spec.commandLine()
                    .getOut()
                    .print(
                            json
                                    ? tunica.toJson(similar)
                                    : new SimilarText(
                                                    width.columns(),
                                                    why,
                                                    tunica.likeness().happenedPage())
                                            .of(similar));
        }
    }

    private CaseLibrary library(Consulted consulted) {
        Likeness likeness = consulted.tunica().likeness();
        return shared.address()
                .map(address -> likeness.cluster(address).open())
                .or(() -> cases.map(likeness::cases))
                .or(() -> consulted.pastCases().map(desk -> released(desk, likeness)))
                .orElseGet(likeness::inventedCases);
    }

    private static CaseLibrary released(PastCaseDesk desk, Likeness likeness) {
        List<PastCase> cases = new ArrayList<>();
        Released released = desk.released();
        released.to(cases::add);
        return likeness.released(LeftOut.told(cases.size() + " past cases released here.", released.leftOut()), cases);
    }

    private void check() {
        width.check();
        if (shared.address().isPresent() && cases.isPresent()) {
            throw new ParameterException(spec.commandLine(), "Give --cases or --index, not both");
        }
        if (file.isEmpty() && words.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "Give a case, --words, or both");
        }
        if (file.isEmpty() && segment.isPresent()) {
            throw new ParameterException(spec.commandLine(), "--segment needs a case");
        }
        if (top < 1 || top > 1000) {
            throw new ParameterException(spec.commandLine(), "--top must be 1 to 1000, is " + top);
        }
    }
}
