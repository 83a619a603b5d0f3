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

/** Signs a release. */
@Command(
        name = "sign",
        description = {
            "Sign a release as clinical lead or safety officer. What is signed is the manifest, which names every file by"
                    + " its digest: look at all of it before (release show, release export).",
            "With the second signature the release is approved."
        },
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ReleaseSignCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(paramLabel = "VERSION")
    private String version = "";

    @Option(names = "--as", required = true, paramLabel = "POST", description = "clinical-lead or safety-officer.")
    private String post = "";

    @Option(names = "--key", required = true, paramLabel = "KEY.json", description = "Your key file.")
    private String keyFile = "";

    @Mixin
    private Passphrase passphrase = new Passphrase();

    @Spec
    private CommandSpec spec;

    ReleaseSignCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        SigningRole role = WordOption.of("--as", post, SigningRole.class);
        try (OpenReleases open = OpenReleases.at(data)) {
            spec.commandLine().getOut().print(SigningHand.sign(open, version, role, keyFile, passphrase));
            spec.commandLine().getOut().println(open.line(version));
        }
        return 0;
    }
}
