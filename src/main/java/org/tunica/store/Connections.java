package org.tunica.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;

/**
 * The ways to one database.
 *
 * @param place how messages call it; holds no password
 * @param pool for everything short; a transaction on it takes the write lock at once
 * @param snapshots for long reading that must not hold up writers
 */
record Connections(String place, HikariDataSource pool, DataSource snapshots) implements AutoCloseable {
    private static final int LONGEST_WAIT_MS = 10_000;

    /** A pool that says at once when there is no connection to be had. */
    static HikariDataSource pool(DataSource source, int most) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(most);
        config.setConnectionTimeout(LONGEST_WAIT_MS);
        return new HikariDataSource(config);
    }

    @Override
    public void close() {
        pool.close();
    }
}
