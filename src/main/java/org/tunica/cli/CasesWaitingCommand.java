package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what waits for its release. */
@Command(
        name = "waiting",
        description =
                "Tell what waits and in how large a crowd it would stand; with an id, show exactly what would be released.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class CasesWaitingCommand implements Callable<Integer> {
    @Parameters(arity = "0..1", paramLabel = "ID", description = "The waiting case to look at.")
    private Optional<String> id = Optional.empty();

    @Mixin
    private CasesPlace cases = new CasesPlace();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    CasesWaitingCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        try (PastCaseHouse house = cases.open(spec.commandLine().getErr())) {
            List<PastCaseHouse.Waiting> waiting = house.waiting();
            WaitingText text = new WaitingText(width.columns());
            spec.commandLine()
                    .getOut()
                    .print(id.map(wanted -> text.one(one(waiting, wanted)))
                            .orElseGet(() -> text.all(waiting, house.option())));
        }
        return 0;
    }

    private static PastCaseHouse.Waiting one(List<PastCaseHouse.Waiting> waiting, String wanted) {
        return waiting.stream()
                .filter(one -> one.read().id().equals(wanted))
                .findFirst()
                .orElseThrow(
                        () -> new FaultyInput("cases", List.of(new Fault("ID", "no case of that name waits here"))));
    }
}
