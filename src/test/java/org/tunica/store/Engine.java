package org.tunica.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/** The two databases a store can be in; a test that takes one runs on both. Public for the generated benchmark. */
public enum Engine {
    SQLITE {
        @Override
        public String freshPlace(Path folder) {
            return folder.resolve("data-" + COUNT.incrementAndGet()).toString();
        }

        @Override
        String url(String place) {
            return "jdbc:sqlite:" + Path.of(place).resolve(FolderPlace.FILE);
        }
    },
    POSTGRESQL {
        @Override
        public String freshPlace(Path folder) throws SQLException {
            String name = "store" + COUNT.incrementAndGet();
            execute(Postgres.RUNNING.getJdbcUrl("postgres", "postgres"), "create database " + name);
            return Postgres.RUNNING.getJdbcUrl("postgres", name);
        }

        @Override
        String url(String place) {
            return place;
        }
    };

    private static final AtomicInteger COUNT = new AtomicInteger();

    /** A place that nothing was ever kept in. */
    public abstract String freshPlace(Path folder) throws SQLException;

    /** The way around the program that somebody else has. */
    abstract String url(String place);

    public void behindItsBack(String place, String... statements) throws SQLException {
        for (String statement : statements) {
            execute(url(place), statement);
        }
    }

    /** Ends every connection to a database of PostgreSQL and takes no new ones, or takes them again. */
    public static void reachable(String place, boolean reachable) throws SQLException {
        String name = place.replaceAll(".*/|\\?.*", "");
        String admin = Postgres.RUNNING.getJdbcUrl("postgres", "postgres");
        execute(admin, "alter database " + name + " allow_connections " + reachable);
        execute(admin, "select pg_terminate_backend(pid) from pg_stat_activity where datname = '" + name + "'");
    }

    private static void execute(String url, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** One real server for all tests of a run, stopped with it. */
    private static final class Postgres {
        private static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setServerConfig("max_connections", "200")
                        // as a server is run, not as tests like it
                        .setServerConfig("fsync", "on")
                        .setServerConfig("synchronous_commit", "on")
                        .setServerConfig("full_page_writes", "on")
                        .start();
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
