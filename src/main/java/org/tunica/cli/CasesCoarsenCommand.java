package org.tunica.cli;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.tunica.pastcases.Coarsening;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells less of a waiting case. */
@Command(
        name = "coarsen",
        description = "Tell less of a waiting case, so that more look like it. It has to be looked at again.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesCoarsenCommand implements Callable<Integer> {
    @Parameters(paramLabel = "ID", description = "The waiting case.")
    private String id = "";

    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Option(
            names = "--less",
            paramLabel = "WHAT",
            split = ",",
            description = "age or weight (wider bands, the second time none), sex, year, leg (its class).")
    private List<Coarsening.What> less = new ArrayList<>();

    @Option(
            names = "--without",
            paramLabel = "CONDITION",
            split = ",",
            description = "A condition or an allergy no longer told; its list becomes unknown.")
    private List<String> without = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    CasesCoarsenCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try (PastCaseHouse house = cases.open(spec.commandLine().getErr())) {
            house.coarsen(id, set(), new HashSet<>(without));
        }
        spec.commandLine().getOut().println("Less is told of " + id + " now; look at it again.");
        return 0;
    }

    private Set<Coarsening.What> set() {
        Set<Coarsening.What> all = EnumSet.noneOf(Coarsening.What.class);
        all.addAll(less);
        return all;
    }
}
