package org.tunica.cli;

import java.time.Instant;
import java.time.LocalDate;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Releases of rules, from the draft to their end. What it does in a line stands here; what takes more has its own class. */
@Command(
        name = "release",
        description = {
            "Build a release of rules and knowledge, have it signed, put it in force, go back.",
            "In order: build, submit, acknowledge (the replay), sign (clinical lead), sign (safety officer), activate."
        },
        footer = {"", Advice.CAUTION},
        subcommands = {
            ReleaseBuildCommand.class,
            ReleaseSignCommand.class,
            ReleaseAcknowledgeCommand.class,
            ReleaseExportCommand.class,
            ReleaseVerifyCommand.class
        },
        mixinStandardHelpOptions = true)
final class ReleaseCommand {
    @Spec
    private CommandSpec spec;

    ReleaseCommand() {
        this.spec = CommandSpec.create();
    }

    @Command(name = "list", description = "Show every release and where it stands.", mixinStandardHelpOptions = true)
    int list(@Mixin DataPlace data) {
        try (OpenReleases open = OpenReleases.at(data)) {
            return print(open.text().all());
        }
    }

    @Command(
            name = "show",
            description = "Show one release: what is new, who signed, what became of it.",
            mixinStandardHelpOptions = true)
    int show(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version) {
        try (OpenReleases open = OpenReleases.at(data)) {
            return print(open.shown(version));
        }
    }

    @Command(
            name = "submit",
            description = "Hand a draft over to those who review it.",
            mixinStandardHelpOptions = true)
    int submit(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().submit(open.by(), version);
            return print(open.line(version));
        }
    }

    @Command(name = "refuse", description = "Say no to a release in review.", mixinStandardHelpOptions = true)
    int refuse(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version, @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().refuse(open.by(), version, because.text());
            return print(open.line(version));
        }
    }

    @Command(
            name = "withdraw",
            description = "Take a release back that was never in force, also one that is planned.",
            mixinStandardHelpOptions = true)
    int withdraw(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version, @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().withdraw(open.by(), version, because.text());
            return print(open.line(version));
        }
    }

    @Command(
            name = "activate",
            description = "Put an approved release in force at once.",
            mixinStandardHelpOptions = true)
    int activate(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().activate(open.by(), version);
            return print(open.line(version));
        }
    }

    @Command(
            name = "schedule",
            description = "Put an approved release in force from a later moment on; nobody need be there then.",
            mixinStandardHelpOptions = true)
    int schedule(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "VERSION") String version,
            @Option(
                            names = "--from",
                            required = true,
                            paramLabel = "MOMENT",
                            description = "For example 2026-03-01T08:00:00Z.")
                    Instant from) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().schedule(open.by(), version, from);
            return print(open.line(version));
        }
    }

    @Command(
            name = "rollback",
            description = "Take the release in force out of force for good; the one before is in force again at once.",
            mixinStandardHelpOptions = true)
    int rollback(@Mixin DataPlace data, @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            String version = open.desk().rollBack(open.by(), because.text()).version();
            return print(open.line(version));
        }
    }

    @Command(
            name = "retire",
            description = "End the use of a release that another took the place of; it cannot be gone back to.",
            mixinStandardHelpOptions = true)
    int retire(@Mixin DataPlace data, @Parameters(paramLabel = "VERSION") String version, @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().retire(open.by(), version, because.text());
            return print(open.line(version));
        }
    }

    @Command(
            name = "review",
            description = "Tell that an active release was looked at again, and when next.",
            mixinStandardHelpOptions = true)
    int review(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "VERSION") String version,
            @Option(names = "--next", required = true, paramLabel = "DAY", description = "Day of the next review.")
                    LocalDate next,
            @Mixin Because because) {
        try (OpenReleases open = OpenReleases.at(data)) {
            open.desk().reviewed(open.by(), version, next, because.text());
            return print(open.line(version));
        }
    }

    @Command(
            name = "shadow",
            description =
                    "Let a release in review or approved run silently beside the one in force, or end that, or show"
                            + " what was counted.",
            mixinStandardHelpOptions = true)
    int shadow(
            @Mixin DataPlace data,
            @Parameters(paramLabel = "VERSION") String version,
            @Parameters(paramLabel = "begin|end|counts") ShadowAsk ask) {
        try (OpenReleases open = OpenReleases.at(data)) {
            return print(open.shadow(version, ask));
        }
    }

    private int print(String text) {
        spec.commandLine().getOut().println(text.stripTrailing());
        return 0;
    }
}
