package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.tunica.Tunica;
import org.tunica.knowledge.Standing;
import org.tunica.rules.Rule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** One line for every rule. */
@Command(
        name = "list",
        description = "One line for every rule: its id, what is the case when it speaks, its class and standing.",
        mixinStandardHelpOptions = true)
final class RulesListCommand implements Callable<Integer> {
    private static final List<Integer> COLUMNS = List.of(9, 19, 12);

    @Option(names = "--class", paramLabel = "CLASS", description = "Only rules of one class, such as caution.")
    private Optional<String> ruleClass = Optional.empty();

    @Option(
            names = "--standing",
            paramLabel = "STANDING",
            description = "Only rules of one standing: published, guideline, consensus, local or unverified.")
    private Optional<Standing> standing = Optional.empty();

    @Mixin
    private TextWidth width = new TextWidth();

    @Spec
    private CommandSpec spec;

    RulesListCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        width.check();
        List<Rule> rules = Tunica.shipped().rules().rules();
        List<Rule> wanted = rules.stream()
                .filter(rule -> ruleClass.isEmpty() || rule.ruleClass().equals(ruleClass.get()))
                .filter(rule -> standing.isEmpty() || rule.standing() == standing.get())
                .toList();
        spec.commandLine().getOut().print(table(wanted) + count(wanted.size(), rules.size()));
        return 0;
    }

    private String table(List<Rule> rules) {
        return rules.stream()
                .map(rule -> Wrap.table(
                        width.columns(),
                        COLUMNS,
                        List.of(List.of(
                                rule.id(), rule.ruleClass(), rule.standing().word(), rule.title()))))
                .collect(Collectors.joining());
    }

    private static String count(int wanted, int all) {
        return wanted == all ? "\n" + all + " rules.\n" : "\n" + wanted + " of " + all + " rules.\n";
    }
}
