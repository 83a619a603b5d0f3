package org.tunica.cli;

import java.util.concurrent.Callable;
import org.tunica.governance.SignedRelease;
import org.tunica.plan.Advice;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a release as one file. */
@Command(
        name = "export",
        description =
                "Write a release with its signatures as one .zip, to be read before signing or verified elsewhere.",
        footer = {"", Advice.CAUTION},
        mixinStandardHelpOptions = true)
final class ReleaseExportCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Parameters(paramLabel = "VERSION")
    private String version = "";

    @Option(names = "--to", required = true, paramLabel = "FILE.zip", description = "The archive; never written over.")
    private String to = "";

    @Spec
    private CommandSpec spec;

    ReleaseExportCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        OutputFile file = OutputFile.fresh(to);
        try (OpenReleases open = OpenReleases.at(data)) {
            SignedRelease release = open.records().release(version);
            file.write(release.archive());
            spec.commandLine()
                    .getOut()
                    .println("Release " + version + " is in " + to + ": "
                            + release.files().texts().size() + " files, "
                            + release.signatures().list().size() + " signatures.");
        }
        return 0;
    }
}
