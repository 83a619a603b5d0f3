package org.tunica.store;

import com.zaxxer.hikari.pool.HikariPool.PoolInitializationException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Supplier;
import org.springframework.dao.NonTransientDataAccessResourceException;
import org.springframework.dao.RecoverableDataAccessException;
import org.springframework.dao.TransientDataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.transaction.TransactionException;

/** Everything that is kept, in one place. Safe for several threads; close it at the end. */
public final class Store implements AutoCloseable {
    private final Place place;
    private final Optional<Path> beside;
    private final Connections connections;
    private final String schema;
    private final Clock clock;
    private final Pen pen;
    private final Cases cases;
    private final CaseDocuments documents;
    private final PastCaseShelf pastCases;
    private final Users users;
    private final FeedbackBook feedback;
    private final CardBook cards;
    private final ChangeShelf changes;
    private final ReleaseShelf releases;
    private final AuditTrail audit;
    private final SeenBook seen;
    private final PartBook parts;
    private final ReplayBook replays;

    private Store(Place place, Optional<Path> beside, Connections connections, String schema, Clock clock) {
        this.place = place;
        this.beside = beside;
        this.connections = connections;
        this.schema = schema;
        this.clock = clock;
        JdbcClient sql = JdbcClient.create(connections.pool());
        this.pen = new Pen(connections, sql, clock);
        this.cases = new SqlCases(pen, shelf(Table.CASES, sql));
        this.documents = new SqlCaseDocuments(pen, shelf(Table.DOCUMENTS, sql), cases);
        this.pastCases = new SqlPastCaseShelf(pen, shelf(Table.PAST_CASES, sql));
        SqlUserKeys keys = new SqlUserKeys(pen, shelf(Table.USER_KEYS, sql), shelf(Table.KEY_WITHDRAWALS, sql));
        this.users = new SqlUsers(pen, shelf(Table.USERS, sql), keys, clock);
        this.feedback = new SqlFeedbackBook(pen, shelf(Table.FEEDBACK, sql), shelf(Table.FEEDBACK_JUDGEMENTS, sql));
        this.cards = new SqlCardBook(pen, shelf(Table.CARDS, sql));
        this.changes = new SqlChangeShelf(pen, shelf(Table.CHANGE_STEPS, sql));
        this.releases = new SqlReleaseShelf(
                pen,
                shelf(Table.RELEASES, sql),
                shelf(Table.RELEASE_STEPS, sql),
                shelf(Table.RELEASE_SIGNATURES, sql),
                shelf(Table.SHADOW_RUNS, sql));
        this.audit = new SqlAuditTrail(connections, sql, pen);
        this.replays = new SqlReplayBook(connections.place(), sql, pen);
        this.parts = new SqlPartBook(connections.place(), sql);
        this.seen = new SqlSeenBook(connections.place(), sql, clock);
    }

    private Shelf shelf(Table table, JdbcClient sql) {
        return new Shelf(connections.place(), table, sql);
    }

    /**
     * Opens the store at a place, makes it when there is none, and brings an older one up to date.
     *
     * @param place a folder, which then holds one file, or a {@code jdbc:postgresql:} URL
     * @param clock tells when things happen
     * @throws org.tunica.casefile.FaultyInput when the place is none, or holds what a newer program or another one wrote
     * @throws StoreUnavailable when the place cannot be read and written
     */
    public static Store open(String place, Clock clock) {
        return open(Place.named(place), clock);
    }

    /**
     * The same with a folder for what is kept beside a database, such as working copies of rules.
     *
     * @throws org.tunica.casefile.FaultyInput also when the data are in a folder, for that one is it already
     */
    public static Store open(String place, Path beside, Clock clock) {
        Place named = Place.named(place);
        if (named.ownFolder().isPresent()) {
            throw Place.fault(named.shown(), "is a folder, and what is kept beside the data is kept there");
        }
        return open(named, Optional.of(beside.toAbsolutePath().normalize()), clock);
    }

    /**
     * The same for a store that must be there already.
     *
     * @throws org.tunica.casefile.FaultyInput also when there is none
     */
    public static Store existing(String place, Clock clock) {
        Place named = Place.named(place);
        if (!named.exists()) {
            throw Place.fault(named.shown(), "holds no data of this program");
        }
        return open(named, clock);
    }

    static Store open(Place place, Clock clock) {
        return open(place, Optional.empty(), clock);
    }

    private static Store open(Place place, Optional<Path> beside, Clock clock) {
        Connections connections = connected(place);
        try {
            return new Store(place, beside, connections, Migrations.run(place.shown(), connections.pool()), clock);
        } catch (RuntimeException e) {
            connections.close();
            throw e;
        }
    }

    private static Connections connected(Place place) {
        try {
            return place.connect();
        } catch (PoolInitializationException e) {
            throw Trouble.of(place.shown(), e);
        }
    }

    /**
     * Whether the database answers, and its tables are still those this program opened it with.
     *
     * @throws StoreUnavailable when it does not answer
     */
    public boolean ready() {
        return Migrations.version(connections.place(), connections.pool()).equals(schema);
    }

    /** Does several things in one transaction: all of them are kept, or none. */
    public <T> T together(Supplier<T> work) {
        return pen.write(work);
    }

    /**
     * Writes all that is kept, as it stands at one moment, while others go on writing. The trail tells of it first.
     *
     * @throws org.tunica.casefile.FaultyInput when the trail does not hold: what was written then could not be restored
     * @throws IOException when the stream cannot be written
     */
    public Backup backUp(Actor by, OutputStream to) throws IOException {
        audit.note(by, Act.BACKED_UP, new Subject("store", "schema/" + schema));
        try {
            return Snapshot.reading(connections, snapshot -> {
                snapshot.verify(Optional.empty()).throwUnlessSound(connections.place());
                return BackupWriter.write(snapshot, schema, clock.instant(), to);
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * Fills this store, which must be empty, from a backup of either database, wholly or not at all.
     *
     * @param noted a head of the audit trail noted elsewhere, which the backup must then hold
     * @throws org.tunica.casefile.FaultyInput when the store is not empty, or with every fault of the archive
     */
    public Backup restore(Actor by, Path archive, Optional<AuditHead> noted) throws IOException {
        try (BackupArchive backup = BackupArchive.open(archive)) {
            Manifest manifest = backup.manifest();
            if (!manifest.schema().equals(schema)) {
                throw Place.fault(
                        archive.toString(),
                        "has schema " + manifest.schema() + ", this program " + schema
                                + "; restore it with the program that wrote it and open that store with this one");
            }
            Restoring restoring = new Restoring(connections.pool());
            backup.check();
            return pen.write(() -> {
                restoring.refuseUnlessEmpty(connections.place());
                Verification found = restoring.fill(archive.toString(), backup, noted);
                audit.note(by, Act.RESTORED, new Subject("store", "head/" + manifest.head()));
                return new Backup(manifest.at(), manifest.head(), found.auditRows() + found.keptRows());
            });
        }
    }

    /** Whether a failure comes from a database that cannot be reached or used now; sessions fail in the words of a library. */
    public static boolean isOutage(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof StoreUnavailable
                    || cause instanceof NonTransientDataAccessResourceException
                    || cause instanceof TransientDataAccessException
                    || cause instanceof RecoverableDataAccessException
                    || cause instanceof TransactionException) {
                return true;
            }
        }
        return false;
    }

    /** The folder for what is kept beside the data and is no part of a backup: their own, or the one that was named for it. */
    public Optional<Path> folder() {
        return place.ownFolder().or(() -> beside);
    }

    /** Tokens that were used at any server over this store. */
    public SeenBook seenTokens() {
        return seen;
    }

    /** Parts of long work that programs over this store share; empty where one program alone works with it. */
    public Optional<PartBook> parts() {
        return place.shared() ? Optional.of(parts) : Optional.empty();
    }

    /** Replays that servers over this store do together; empty where one program alone serves from it. */
    public Optional<ReplayBook> replays() {
        return place.shared() ? Optional.of(replays) : Optional.empty();
    }

    /**
     * Sessions of people, so that whoever signed in at one server is known at all of them; empty where one program alone
     * serves from this store. Whoever takes it starts and ends its cleaning.
     */
    public Optional<JdbcIndexedSessionRepository> sessions() {
        return place.shared() ? Optional.of(SqlSessions.of(connections)) : Optional.empty();
    }

    /** The cases. */
    public Cases cases() {
        return cases;
    }

    /** What was made from cases. */
    public CaseDocuments documents() {
        return documents;
    }

    /** The past cases. */
    public PastCaseShelf pastCases() {
        return pastCases;
    }

    /** The users. */
    public Users users() {
        return users;
    }

    /** The feedback on cards. */
    public FeedbackBook feedback() {
        return feedback;
    }

    /** What cards spoke of. */
    public CardBook cards() {
        return cards;
    }

    /** Proposed changes of rules. */
    public ChangeShelf changes() {
        return changes;
    }

    /** The releases of rules and knowledge. */
    public ReleaseShelf releases() {
        return releases;
    }

    /** The audit trail. */
    public AuditTrail audit() {
        return audit;
    }

    @Override
    public void close() {
        connections.close();
    }
}
