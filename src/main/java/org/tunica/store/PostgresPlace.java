package org.tunica.store;

import com.zaxxer.hikari.HikariDataSource;
import org.postgresql.ds.PGSimpleDataSource;

/** A PostgreSQL by its URL; name and password stand in the URL or in the password file of its driver. */
record PostgresPlace(String url) implements Place {
    static final String SCHEME = "jdbc:postgresql:";

    private static final int MOST_CONNECTIONS = 8;

    @Override
    public String shown() {
        return Place.withoutSecrets(url);
    }

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public boolean shared() {
        return true;
    }

    @Override
    public Connections connect() {
        PGSimpleDataSource source = new PGSimpleDataSource();
        try {
            source.setUrl(url);
        } catch (IllegalArgumentException e) {
            throw Place.fault(shown(), "is no URL that the PostgreSQL driver understands");
        }
        source.setApplicationName("tunica");
        source.setTcpKeepAlive(true);
        HikariDataSource pool = Connections.pool(source, MOST_CONNECTIONS, "set lock_timeout = " + Connections.WAIT_MS);
        return new Connections(shown(), pool);
    }

    /** The URL may hold a password. */
    @Override
    public String toString() {
        return shown();
    }
}
