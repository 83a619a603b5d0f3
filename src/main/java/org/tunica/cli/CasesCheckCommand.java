package org.tunica.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tunica.Tunica;
import org.tunica.pastcases.CaseCount;
import org.tunica.plan.Advice;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads every line of a file or base of past cases and tells what it holds. */
@Command(
        name = "check",
        description =
                "Read every line of a file or a case base: what it holds, what is faulty, and the digest of its bytes.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesCheckCommand implements Callable<Integer> {
    /** One of the two. */
    static final class What {
        @Parameters(paramLabel = "FILE", description = "A file of past cases, plain or packed with gzip.")
        private @Nullable String file;

        @Option(names = "--cases", paramLabel = "FOLDER", description = "The folder of a case base.")
        private @Nullable String folder;
    }

    @ArgGroup(multiplicity = "1")
    private What what = new What();

    @Spec
    private CommandSpec spec;

    CasesCheckCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Tunica tunica = Tunica.shipped();
        try (ProgressBar bar =
                ProgressBar.atTerminal("checking", spec.commandLine().getErr())) {
            CaseCount count = what.file != null
                    ? tunica.pastCases().readCases(CasesFolder.path(what.file), any -> {}, bar)
                    : tunica.pastCases()
                            .caseBase(CasesFolder.path(String.valueOf(what.folder)))
                            .check(bar);
            String name = what.file != null ? what.file : String.valueOf(what.folder);
            spec.commandLine().getOut().print(new CasesText(tunica.knowledge()).checked(count, name));
        }
        return 0;
    }
}
