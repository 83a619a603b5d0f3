package org.tunica.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.governance.Manifest;
import org.tunica.governance.ReleaseCheck;
import org.tunica.governance.SignOff;
import org.tunica.governance.SignedRelease;
import org.tunica.plan.Advice;
import org.tunica.signing.KeyRing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Verifies a release from its file alone. */
@Command(
        name = "verify",
        description = {
            "Check a release with nothing but its file and public keys you trust: every byte as the manifest says, the replay"
                    + " acknowledged, two people of two posts signed, none of them an author.",
            "Whether it is in force somewhere is another question."
        },
        footer = {"", Advice.CAUTION},
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:it may be used", "2:it may not, and why"},
        mixinStandardHelpOptions = true)
final class ReleaseVerifyCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE.zip", description = "The release.")
    private String file = "";

    @Option(
            names = "--keys",
            required = true,
            paramLabel = "KEYS.json",
            description =
                    "The public keys you trust, as key list --json writes them (tunica-keys/1). Get them by another"
                            + " way than the release.")
    private String keysFile = "";

    @Spec
    private CommandSpec spec;

    ReleaseVerifyCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        KeyRing keys = KeyRing.read(keysFile, InputFile.read(keysFile));
        SignedRelease release = SignedRelease.in(path());
        Manifest manifest = ReleaseCheck.verified(release.files(), release.signatures(), keys)
                .manifest();
        SignOff signOff = SignOff.of(manifest, release.signatures(), keys);
        spec.commandLine()
                .getOut()
                .print("Release " + manifest.version() + " holds: "
                        + manifest.files().size()
                        + " files are as its manifest says.\n"
                        + "What is new: " + manifest.title() + "\n"
                        + ReleaseText.signatures(signOff));
        return 0;
    }

    private Path path() {
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new FaultyInput("input", List.of(new Fault(file, "is no file name here")));
        }
    }
}
