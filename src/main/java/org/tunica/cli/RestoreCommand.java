package org.tunica.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Actor;
import org.tunica.store.AuditHead;
import org.tunica.store.Backup;
import org.tunica.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Restores a backup. */
@Command(
        name = "restore",
        description =
                "Fill an empty place from a backup, after checking its digests and its audit trail; wholly or not at all."
                        + " A backup of a folder can be restored into a database and the other way round.",
        mixinStandardHelpOptions = true)
final class RestoreCommand implements Callable<Integer> {
    @Mixin
    private DataPlace data = new DataPlace();

    @Option(names = "--from", required = true, paramLabel = "FILE.zip", description = "The archive.")
    private String from = "";

    @Option(
            names = "--noted",
            paramLabel = "HEAD",
            description = "The head that backup printed; the archive must hold it.")
    private Optional<String> noted = Optional.empty();

    @Spec
    private CommandSpec spec;

    RestoreCommand() {
        this.spec = CommandSpec.create();
    }

    @Override
    public Integer call() {
        Path archive = archive();
        Optional<AuditHead> head = noted.map(AuditHead::of);
        try (Store store = Store.open(data.place(), Clock.systemUTC())) {
            Backup backup = store.restore(new Actor(data.actor()), archive, head);
            spec.commandLine().getOut().printf("Rows restored: %d, as they stood at %s.%n", backup.rows(), backup.at());
        } catch (IOException e) {
            throw fault("cannot be read: " + e.getMessage());
        }
        return 0;
    }

    private Path archive() {
        try {
            Path path = Path.of(from);
            if (Files.isRegularFile(path)) {
                return path;
            }
        } catch (InvalidPathException e) {
            // told below, like a name nothing has
        }
        throw fault("there is no such file");
    }

    private FaultyInput fault(String says) {
        return new FaultyInput("input", List.of(new Fault(from, says)));
    }
}
