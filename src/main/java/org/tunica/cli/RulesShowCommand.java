package org.tunica.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Nearest;
import org.tunica.rules.Rule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One rule with everything behind it. */
@Command(
        name = "show",
        description = "One rule as a sentence, with its limits, sources and change record.",
        mixinStandardHelpOptions = true)
final class RulesShowCommand implements Callable<Integer> {
    @Parameters(paramLabel = "ID", description = "For example EXC-001.")
    private String id = "";

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    RulesShowCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        Tunica tunica = Tunica.shipped();
        spec.commandLine().getOut().print(new RuleText(tunica.knowledge(), width.columns()).whole(rule(tunica)));
        return 0;
    }

    private Rule rule(Tunica tunica) {
        List<Rule> rules = tunica.rules().rules();
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow(() -> {
            String hint = Nearest.hint(id, rules.stream().map(Rule::id).toList());
            return new FaultyInput("input", List.of(new Fault("rule " + id, "there is no such rule" + hint)));
        });
    }
}
