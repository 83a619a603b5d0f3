package org.tunica.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.sql.SQLException;
import java.util.Map;
import java.util.Optional;
import org.springframework.transaction.TransactionSystemException;
import org.sqlite.SQLiteException;

/** Says in plain words why a database did not do its work. */
final class Trouble {
    private static final String READ_ONLY = "may not be written: the folder, the file or the disk is read-only";
    private static final String FULL = "the disk is full; nothing of the last write was kept";
    private static final String BUSY = "another program holds the data; try again when it is done";
    private static final String DAMAGED = "the file is damaged or no store of this program; restore a backup";

    /** By the first part of the result code of SQLite, as its own documentation names them. */
    private static final Map<String, String> OF_SQLITE = Map.of(
            "SQLITE_FULL", FULL,
            "SQLITE_READONLY", READ_ONLY,
            "SQLITE_CANTOPEN", "cannot be opened: the folder may not be entered or written",
            "SQLITE_BUSY", BUSY,
            "SQLITE_LOCKED", BUSY,
            "SQLITE_CORRUPT", DAMAGED,
            "SQLITE_NOTADB", DAMAGED,
            "SQLITE_IOERR", "the disk gave an error; nothing of the last write was kept");

    /** By SQLSTATE or, where a class of them is meant, its first two characters. */
    private static final Map<String, String> OF_SQLSTATE = Map.of(
            "53100", FULL,
            "53300", "the database takes no more connections",
            "25006", READ_ONLY,
            "28", "the database does not let this user in; see user and password",
            "3D", "there is no database of that name",
            "40", BUSY,
            "55P03", BUSY,
            "42501", "this user may not write there",
            "08", "the database is not reached; see address and whether it runs",
            "57", "the database was stopped; nothing of the last write was kept unless it was acknowledged");

    private Trouble() {}

    static StoreUnavailable of(String place, Exception e) {
        return new StoreUnavailable(place + ": " + why(e), e);
    }

    private static String why(Exception e) {
        for (Throwable cause = first(e); cause != null; cause = cause.getCause()) {
            if (cause instanceof AccessDeniedException) {
                return READ_ONLY;
            }
            Optional<String> known = cause instanceof SQLException sql ? known(sql) : Optional.empty();
            if (known.isPresent()) {
                return known.get();
            }
        }
        return (e instanceof IOException ? "cannot be used: " : "the database failed: ") + e.getMessage();
    }

    /** A database that gave up has often ended the transaction itself; that it cannot be undone again is no news. */
    private static Throwable first(Exception e) {
        Throwable before = e instanceof TransactionSystemException ending ? ending.getApplicationException() : e;
        return before == null ? e : before;
    }

    private static Optional<String> known(SQLException e) {
        if (e instanceof SQLiteException sqlite) {
            String code = sqlite.getResultCode().name();
            return OF_SQLITE.entrySet().stream()
                    .filter(entry -> code.startsWith(entry.getKey()))
                    .map(Map.Entry::getValue)
                    .findFirst();
        }
        String state = String.valueOf(e.getSQLState());
        return Optional.ofNullable(OF_SQLSTATE.get(state))
                .or(() -> Optional.ofNullable(OF_SQLSTATE.get(state.substring(0, Math.min(2, state.length())))));
    }
}
