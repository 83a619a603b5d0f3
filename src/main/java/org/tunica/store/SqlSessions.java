package org.tunica.store;

import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Sessions of people in the table of that name, for the library that reads and writes them. The id of a session is the secret
 * its browser shows; here stands its digest alone, so that a reader of the table, or of a copy of it, opens no door by it.
 * The library itself writes the id as it is, hence statements of our own wherever it occurs.
 */
final class SqlSessions {
    private static final String DIGEST = "encode(sha256(convert_to(cast(? as text), 'UTF8')), 'hex')";

    private static final String CREATE =
            "insert into sessions (primary_id, session_id, creation_time, last_access_time,"
                    + " max_inactive_interval, expiry_time, principal_name) values (?, " + DIGEST + ", ?, ?, ?, ?, ?)";

    /** The secret comes back as it was asked for: nothing else knows it. */
    private static final String GET = "select s.primary_id, asked.session_id, s.creation_time, s.last_access_time,"
            + " s.max_inactive_interval, a.attribute_name, a.attribute_bytes"
            + " from (values (cast(? as text))) as asked (session_id)"
            + " join sessions s on s.session_id = " + DIGEST.replace("?", "asked.session_id")
            + " left join sessions_attributes a on a.session_primary_id = s.primary_id";

    private static final String UPDATE = "update sessions set session_id = " + DIGEST + ", last_access_time = ?,"
            + " max_inactive_interval = ?, expiry_time = ?, principal_name = ? where primary_id = ?";

    private static final String DELETE =
            "delete from sessions where session_id = " + DIGEST + " and max_inactive_interval >= 0";

    /**
     * Two requests of one session may write the same thing at once, and one may write to a session that another ended: then
     * it is gone and stays so.
     */
    private static final String WRITE_ATTRIBUTE =
            "insert into sessions_attributes (session_primary_id, attribute_name, attribute_bytes)"
                    + " select s.primary_id, v.name, v.bytes"
                    + " from (values (cast(? as text), cast(? as text), cast(? as bytea))) as v (id, name, bytes)"
                    + " join sessions s on s.primary_id = v.id"
                    + " on conflict (session_primary_id, attribute_name) do update set attribute_bytes = excluded.attribute_bytes";

    private SqlSessions() {}

    static JdbcIndexedSessionRepository of(Connections connections) {
        TransactionTemplate transaction = new TransactionTemplate(new JdbcTransactionManager(connections.pool()));
        transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        JdbcIndexedSessionRepository sessions =
                new JdbcIndexedSessionRepository(new JdbcTemplate(connections.pool()), transaction);
        sessions.setTableName("sessions");
        sessions.setCreateSessionQuery(CREATE);
        sessions.setGetSessionQuery(GET);
        sessions.setUpdateSessionQuery(UPDATE);
        sessions.setDeleteSessionQuery(DELETE);
        sessions.setCreateSessionAttributeQuery(WRITE_ATTRIBUTE);
        return sessions;
    }
}
