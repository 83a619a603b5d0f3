package org.tunica.store;

import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.session.jdbc.JdbcIndexedSessionRepository;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** Sessions of people in the table of that name, for the library that reads and writes them. */
final class SqlSessions {
    /**
     * Two requests of one session may write the same thing at once, and one may write to a session that another ended: then
     * it is gone and stays so.
     */
    private static final String WRITE =
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
        sessions.setCreateSessionAttributeQuery(WRITE);
        return sessions;
    }
}
