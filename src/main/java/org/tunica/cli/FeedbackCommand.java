package org.tunica.cli;

import java.util.List;
import org.tunica.plan.Advice;
import org.tunica.releases.JudgeDesk;
import org.tunica.store.FeedbackBook;
import org.tunica.store.HookFeedback;
import org.tunica.store.Judgement;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What people did with cards, and whether it was right. */
@Command(
        name = "feedback",
        description = "Show what people did with cards, and say later whether it was right.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class FeedbackCommand {
    @Spec
    private CommandSpec spec;

    FeedbackCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(
            name = "list",
            description = "Show the cards that were set aside, the last one first.",
            mixinStandardHelpOptions = true)
    int list(
            @Mixin DataPlace data,
            @Option(names = "--all", description = "Also those that were accepted, and those judged already.")
                    boolean all) {
        try (OpenReleases open = OpenReleases.at(data)) {
            List<String> lines =
                    new FeedbackText(open.store()).lines(open.watch().feedback(kept -> true), all);
            spec.commandLine().getOut().print(lines.isEmpty() ? "None.\n" : String.join("\n", lines) + "\n");
        }
        return ExitCode.OK;
    }

    @Command(
            name = "judge",
            description =
                    "Say whether it was right to do with a card what was done. The last word counts; none is lost.",
            mixinStandardHelpOptions = true)
    int judge(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "CARD", description = "Its id.") String card,
            @Parameters(paramLabel = "FINDING", description = "appropriate, not-appropriate or cannot-tell.")
                    String finding,
            @Option(names = "--by", required = true, paramLabel = "NAME", description = "Your user name.") String by,
            @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            Judgement.Finding found = WordOption.of("FINDING", finding, Judgement.Finding.class);
            JudgeDesk desk = new JudgeDesk(open.store());
            HookFeedback report = desk.lastOf(card);
            FeedbackBook.KeptJudgement kept = desk.judge(open.by(), by, report, found, because.text());
            spec.commandLine()
                    .getOut()
                    .println("Card " + card + ", " + report.outcome() + ": "
                            + kept.judgement().found().word().replace('-', ' ') + ", says " + by + ".");
        }
        return ExitCode.OK;
    }
}
