package org.tunica.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.review.Difference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What differs between two sets of rules. */
@Command(
        name = "diff",
        description = "Say in English what differs between two sets of rules and knowledge: sentences before and after,"
                + " numbers before and after, with unit and source.",
        mixinStandardHelpOptions = true)
final class RulesDiffCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "OLD", description = "A folder or .zip that holds rules/ and knowledge/.")
    private String older = "";

    @Parameters(index = "1", paramLabel = "NEW", description = "Another one.")
    private String newer = "";

    @Spec
    private CommandSpec spec;

    RulesDiffCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Tunica before = Tunica.of(RuleFolder.of(older).bundle());
        Tunica after = Tunica.of(RuleFolder.of(newer).bundle());
        List<Difference> differences = after.review().since(before.review());
        spec.commandLine().getOut().print(Difference.text(differences));
        return 0;
    }
}
