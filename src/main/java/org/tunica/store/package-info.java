/**
 * Keeps what must be kept: versions of cases, what was made from them, past cases, users, feedback and the audit trail.
 * Home of JDBC, connection pool and migrations.
 *
 * <p>In: texts that the front door wrote, and who acts. Out: the same texts with number, time and person. One folder with
 * one SQLite file, or a PostgreSQL by its URL; the same SQL for both, so JSON is opaque text, what is searched is a column,
 * nothing is null, and nothing is ordered by text (the two sort differently). Every write is one transaction with its row
 * of the audit trail, and the trail holds a digest of what was written.
 *
 * <p>Entry type: {@link org.tunica.store.Store}; from it the repositories {@link org.tunica.store.Cases}, {@link
 * org.tunica.store.CaseDocuments}, {@link org.tunica.store.PastCaseShelf}, {@link org.tunica.store.Users}, {@link
 * org.tunica.store.FeedbackBook}, {@link org.tunica.store.ReleaseShelf}, {@link org.tunica.store.ChangeShelf}, {@link org.tunica.store.CardBook} and {@link org.tunica.store.AuditTrail}. May import {@code casefile}.
 *
 * <p>What several servers share while they run (sessions, tokens that were seen, parts of replays) is here too, outside the
 * trail and outside backups: after a restore everybody signs in again, and a token made before it is refused.
 *
 * <p>Decisions. A transaction takes its lock by its first statement. One backup format serves both databases.
 */
@NullMarked
package org.tunica.store;

import org.jspecify.annotations.NullMarked;
