package org.tunica.cli;

import org.tunica.plan.Advice;
import picocli.CommandLine.Command;

/** What the rules say, and why. */
@Command(
        name = "rules",
        description = "Read, check and compare the rules, and ask why one spoke or stayed quiet.",
        footer = {"", Advice.CAUTION},
        subcommands = {
            RulesListCommand.class,
            RulesShowCommand.class,
            RulesCheckCommand.class,
            RulesDiffCommand.class,
            RulesExplainCommand.class,
            RulesBookCommand.class
        },
        mixinStandardHelpOptions = true)
final class RulesCommand {}
