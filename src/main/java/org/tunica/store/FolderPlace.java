package org.tunica.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteConfig.TransactionMode;
import org.sqlite.SQLiteDataSource;

/** A folder with one SQLite file, and beside it the two that SQLite itself keeps while it is open. */
record FolderPlace(Path folder) implements Place {
    /** The name of the file. */
    static final String FILE = "tunica.db";

    private static final int MOST_CONNECTIONS = 4;

    static FolderPlace named(String name) {
        try {
            // the driver would read the rest of such a name as settings
            if (name.isBlank() || name.contains("?")) {
                throw Place.fault(name, "is no name for a folder here");
            }
            return new FolderPlace(Path.of(name).toAbsolutePath().normalize());
        } catch (InvalidPathException e) {
            throw Place.fault(name, "is no name for a folder: " + e.getReason());
        }
    }

    @Override
    public String shown() {
        return folder.toString();
    }

    @Override
    public boolean exists() {
        return Files.isRegularFile(folder.resolve(FILE));
    }

    @Override
    public Optional<Path> ownFolder() {
        return Optional.of(folder);
    }

    @Override
    public Connections connect() {
        prepare();
        return new Connections(shown(), Connections.pool(source(), MOST_CONNECTIONS, "select 1"));
    }

    /** Nobody but the owner of the process may read cases; SQLite gives its other files the rights of this one. */
    private void prepare() {
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder, owner("rwx------"));
            }
            if (!exists()) {
                Files.createFile(folder.resolve(FILE), owner("rw-------"));
            }
        } catch (FileAlreadyExistsException e) {
            if (!exists()) {
                throw Place.fault(
                        shown(), "is no folder that data could be kept in: " + e.getMessage() + " is in the way");
            }
        } catch (IOException e) {
            throw Trouble.of(shown(), e);
        }
    }

    private static FileAttribute<?>[] owner(String rights) {
        boolean known = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return known
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }

    /**
     * A transaction here takes the write lock by its first statement, which {@link Pen} sees to. The driver's own way of
     * beginning with the lock must not be used: where the lock is not had, the connection goes back to the pool believing
     * itself in a transaction, and what is written next on it stands alone, statement by statement.
     */
    SQLiteDataSource source() {
        SQLiteConfig config = new SQLiteConfig();
        config.setTransactionMode(TransactionMode.DEFERRED);
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.setBusyTimeout(Connections.WAIT_MS);
        config.enforceForeignKeys(true);
        // what a person refused to keep is not left in free pages
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + folder.resolve(FILE));
        return source;
    }
}
