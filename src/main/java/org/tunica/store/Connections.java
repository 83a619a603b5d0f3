package org.tunica.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;

/**
 * The way to one database.
 *
 * @param place how messages call it; holds no password
 */
record Connections(String place, HikariDataSource pool) implements AutoCloseable {
    /** How long a writer waits for another program that writes. */
    static final int WAIT_MS = 5_000;

    private static final int LONGEST_WAIT_MS = 10_000;

    /**
     * A pool that says at once when there is no connection to be had.
     *
     * @param first what is said first on each connection
     */
    static HikariDataSource pool(DataSource source, int most, String first) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source);
        config.setMaximumPoolSize(most);
        config.setConnectionInitSql(first);
        config.setConnectionTimeout(LONGEST_WAIT_MS);
        return new HikariDataSource(config);
    }

    @Override
    public void close() {
        pool.close();
    }
}
