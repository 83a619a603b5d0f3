package org.tunica.cli;

import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import org.tunica.Tunica;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.Imported;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Fills a case base with made-up cases. */
@Command(
        name = "invent",
        description = "Fill a case base with INVENTED cases, to try things out; nothing may be concluded from them.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesInventCommand implements Callable<Integer> {
    private static final int TOLD_EVERY = 500;

    @Mixin
    private CasesFolder cases = new CasesFolder();

    @Option(
            names = "--count",
            paramLabel = "N",
            defaultValue = "" + InventedLibrary.USUAL_COUNT,
            description = "How many (default: ${DEFAULT-VALUE}).")
    private long count;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "" + InventedLibrary.USUAL_SEED,
            description = "The same seed makes the same cases (default: ${DEFAULT-VALUE}).")
    private long seed;

    @Spec
    private CommandSpec spec;

    CasesInventCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        if (count < 1) {
            throw new ParameterException(spec.commandLine(), "--count must be 1 or more, is " + count);
        }
        Tunica tunica = Tunica.shipped();
        AtomicLong made = new AtomicLong();
        try (ProgressBar bar =
                ProgressBar.atTerminal("inventing", spec.commandLine().getErr())) {
            Imported imported = cases.base(tunica)
                    .add(tunica.pastCases().inventedLibrary(seed).cases(count).peek(one -> {
                        if (made.incrementAndGet() % TOLD_EVERY == 0) {
                            bar.at(made.get(), count, made.get());
                        }
                    }));
            spec.commandLine().getOut().print(CasesText.invented(imported, cases.name(), seed));
        }
        return 0;
    }
}
