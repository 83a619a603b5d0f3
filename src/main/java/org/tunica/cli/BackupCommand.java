package org.tunica.cli;

import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import org.tunica.store.Actor;
import org.tunica.store.Backup;
import org.tunica.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Makes a backup. */
@Command(
        name = "backup",
        description =
                "Write all that is kept into one archive, as it stands at one moment; others may go on working. It holds"
                        + " patients' data in the clear: keep it as safe as the data.",
        mixinStandardHelpOptions = true)
final class BackupCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Option(names = "--to", required = true, paramLabel = "FILE.zip", description = "The archive; never written over.")
    private String to = "";

    @Spec
    private CommandSpec spec;

    BackupCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        OutputFile file = OutputFile.fresh(to).ownerOnly();
        AtomicReference<Backup> made = new AtomicReference<>();
        try (Store store = Store.existing(data.place(), Clock.systemUTC())) {
            file.write(out -> made.set(store.backUp(new Actor(data.actor()), out)));
        }
        spec.commandLine()
                .getOut()
                .printf(
                        "Rows in %s: %d.%nHead of its audit trail: %s%n",
                        to, made.get().rows(), made.get().head());
        return 0;
    }
}
