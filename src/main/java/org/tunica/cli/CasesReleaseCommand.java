package org.tunica.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Releases waiting cases into the base. */
@Command(
        name = "release",
        description = {
            "Release waiting cases into the base: those whose digests you give, all or none.",
            "In a folder who releases them is not kept; at a server the trail tells it. A case in too small a crowd is held back and says what it waits for."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesReleaseCommand implements Callable<Integer> {
    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Option(
            names = "--digest",
            paramLabel = "sha256:...",
            required = true,
            arity = "1..*",
            description = "Digest that cases waiting ID showed under the line; several are released together.")
    private List<String> digests = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    CasesReleaseCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try (PastCaseHouse house = cases.open(spec.commandLine().getErr())) {
            int released = house.release(new LinkedHashSet<>(digests));
            spec.commandLine()
                    .getOut()
                    .println(released + (released == 1 ? " case" : " cases") + " released into the base.");
        }
        return 0;
    }
}
