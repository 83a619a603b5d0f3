package org.tunica.cli;

import java.util.List;
import java.util.Optional;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** People who write, review and sign releases. */
@Command(
        name = "people",
        description = "Say who writes rules, who is clinical lead and who is safety officer.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class PeopleCommand {
    @Spec
    private CommandSpec spec;

    PeopleCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(
            name = "add",
            description = "Add a person, who does not sign in with this. The folder is made when it is not there.",
            mixinStandardHelpOptions = true)
    int add(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "NAME", description = "User name, in lower case.") String name,
            @Option(
                            names = "--post",
                            paramLabel = "WORD",
                            description = "rule-author, clinical-lead, safety-officer, specialist, meeting-member;"
                                    + " several are allowed if they go together.")
                    List<String> posts) {
        try (OpenReleases open = OpenReleases.made(data)) {
            PeopleText.add(open, name, Optional.ofNullable(posts).orElse(List.of()));
            spec.commandLine().getOut().println(PeopleText.all(open));
        }
        return 0;
    }

    @Command(name = "list", description = "Show everybody.", mixinStandardHelpOptions = true)
    int list(@Mixin DataPlace data) {
        try (OpenReleases open = OpenReleases.at(data)) {
            spec.commandLine().getOut().println(PeopleText.all(open));
        }
        return 0;
    }
}
