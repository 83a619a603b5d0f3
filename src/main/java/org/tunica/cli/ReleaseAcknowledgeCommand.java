package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.plan.Advice;
import org.tunica.signing.SigningRole;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Acknowledges the replay of a release. */
@Command(
        name = "acknowledge",
        description =
                "Say with your key that you have read what the replay of a release found. No author can; nobody signs"
                        + " the release before.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ReleaseAcknowledgeCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(paramLabel = "VERSION")
    private String version = "";

    @Option(names = "--key", required = true, paramLabel = "KEY.json", description = "Your key file.")
    private String keyFile = "";

    @Mixin
    private Passphrase passphrase = new Passphrase();

    @Spec
    private CommandSpec spec;

    ReleaseAcknowledgeCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        try (OpenReleases open = OpenReleases.at(data)) {
            spec.commandLine()
                    .getOut()
                    .print(SigningHand.sign(open, version, SigningRole.REVIEWER, keyFile, passphrase));
            spec.commandLine().getOut().println(open.line(version));
        }
        return 0;
    }
}
