package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.Release;
import org.tunica.pastcases.WaitingCase;
import org.tunica.pastcases.WaitingRoom;
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
    private CasesFolder folder = new CasesFolder();

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
        Tunica tunica = Tunica.shipped();
        List<WaitingRoom.Line> lines = folder.room().lines();
        List<WaitingCase> waiting = CasesFolder.read(tunica, lines);
        List<Release.Place> places =
                tunica.pastCases().release(folder.released(tunica)).places(waiting);
        WaitingText text = new WaitingText(width.columns());
        spec.commandLine()
                .getOut()
                .print(id.map(wanted -> {
                            int at = index(waiting, wanted);
                            return text.one(waiting.get(at), lines.get(at), places.get(at));
                        })
                        .orElseGet(() -> text.all(places)));
        return 0;
    }

    private static int index(List<WaitingCase> waiting, String wanted) {
        for (int i = 0; i < waiting.size(); i++) {
            if (waiting.get(i).id().equals(wanted)) {
                return i;
            }
        }
        throw new FaultyInput("cases", List.of(new Fault("ID", "no case of that name waits here")));
    }
}
