package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.net.HttpCookie;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.releases.TwoReleases;
import org.tunica.store.Actor;
import org.tunica.store.Backup;
import org.tunica.store.Engine;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;

/** Two servers over one PostgreSQL, each in a process of its own; a request may go to either. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class ReplicasTest {
    private static final String PASSWORD = "seven quiet herons";
    private static final Actor SETTING_UP = new Actor("command-line");

    @TempDir
    private static Path folder;

    private static String place;
    private static Replica one;
    private static Replica other;

    @BeforeAll
    static void start() throws Exception {
        place = Engine.POSTGRESQL.freshPlace(folder);
        TwoReleases.inForce(place);
        try (Store store = Store.existing(place, Clock.systemUTC())) {
            String hash = new PasswordHashing(10).of(PASSWORD);
            User stefan = store.users().find("stefan").orElseThrow();
            store.users().save(SETTING_UP, stefan.withPasswordHash(hash));
            for (String name : List.of("robin", "wren")) {
                store.users().save(SETTING_UP, User.fresh(name, Set.of(Role.SPECIALIST), hash));
            }
        }
        Files.writeString(
                folder.resolve("server.yaml"),
                "format: tunica-server/1\nsignIn: { hashCost: 10, mostFailures: 3 }\n"
                        + "limits: { perAddressPerMinute: 1000000, perCallerPerMinute: 1000000 }\n"
                        + Served.signed(Keys.published(Keys.CURVED)));
        one = new Replica(place, folder);
        other = new Replica(place, folder);
        assertTrue(one.up().contains("Release 1.1.0 is in force."));
        other.up();
    }

    @AfterAll
    static void stop() {
        one.close();
        other.close();
    }

    private static Browser signedIn(Replica at, String name) throws Exception {
        Browser browser = at.browser();
        browser.signIn(name, PASSWORD);
        return browser;
    }

    /** The same browser at the other server, as a balancer would send it. */
    private static Browser at(Replica replica, Browser browser) {
        Browser there = replica.browser();
        there.carry(browser.session().orElseThrow());
        return there;
    }

    @Test
    @Order(1)
    void whoeverSignsInAtOne_isSignedInAndOutAtTheOther() throws Exception {
        Browser here = signedIn(one, "robin");
        Browser there = at(other, here);
        assertEquals(200, there.get("/api/cases").statusCode());
        there.form("/sign-out", there.token(), Map.of());
        assertEquals(401, here.get("/api/cases").statusCode());
    }

    @Test
    @Order(1)
    void aSession_isOverWhenItsBytesCannotBeRead() throws Exception {
        Browser here = signedIn(one, "robin");
        Engine.POSTGRESQL.behindItsBack(
                place,
                "update sessions_attributes set attribute_bytes = 'rO0ABXNyAA' where attribute_name like 'SPRING%'");
        assertEquals(401, at(other, here).get("/api/cases").statusCode());
        assertEquals(200, signedIn(other, "robin").get("/api/cases").statusCode());
    }

    /** Whoever may read the database may not therefore go on in somebody's name. */
    @Test
    @Order(1)
    void whatStandsInTheTable_opensNoDoor() throws Exception {
        Browser here = signedIn(one, "robin");
        String secret = here.session().orElseThrow().getValue();
        List<String> kept = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection(place);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select session_id, primary_id from sessions")) {
            while (rows.next()) {
                kept.add(rows.getString(1));
                kept.add(rows.getString(2));
            }
        }
        assertTrue(kept.size() >= 2, kept::toString);
        for (String id : kept) {
            String shown = Base64.getEncoder().encodeToString(id.getBytes(StandardCharsets.UTF_8));
            assertNotEquals(secret, shown);
            HttpCookie cookie = (HttpCookie) here.session().orElseThrow().clone();
            cookie.setValue(shown);
            Browser thief = other.browser();
            thief.carry(cookie);
            assertEquals(401, thief.get("/api/cases").statusCode());
        }
        assertEquals(200, at(other, here).get("/api/cases").statusCode());
    }

    @Test
    @Order(1)
    void wrongPasswordsAtBoth_lockAtBoth() throws Exception {
        one.browser().signIn("wren", "one wrong guess");
        other.browser().signIn("wren", "another wrong guess");
        one.browser().signIn("wren", "the last wrong guess");
        for (Replica replica : List.of(one, other)) {
            assertEquals(401, signedIn(replica, "wren").get("/api/cases").statusCode());
        }
    }

    @Test
    @Order(1)
    void aTokenSeenAtOne_isRefusedAtTheOther() throws Exception {
        String token = Token.sound(Served.BASE + "/cds-services", Instant.now()).signed();
        assertEquals(200, called(one, token));
        assertEquals(401, called(other, token));
        assertEquals(401, called(one, token));
        assertEquals(
                200,
                called(
                        other,
                        Token.sound(Served.BASE + "/cds-services", Instant.now())
                                .signed()));
    }

    static int called(Replica replica, String token) throws Exception {
        Browser browser = replica.browser();
        HttpRequest.Builder request = browser.at("/cds-services").header("Authorization", "Bearer " + token);
        return browser.send(request).statusCode();
    }

    /** A rollback is told to one; the other follows by itself. */
    @Test
    @Order(2)
    void aReleaseThatCameIntoForceAtOne_isServedByBoth_andNobodyMustSignInAgain() throws Exception {
        Browser stefan = signedIn(one, "stefan");
        String token = stefan.token();
        try (Watchman watchman = new Watchman(one, other)) {
            stefan.form(
                    "/governance/releases/1.1.0/by-either/rollback", token, Map.of("reason", "it warned too often"));
            for (Replica replica : List.of(one, other)) {
                List<String> said = replica.up();
                assertTrue(said.contains("Release 1.0.0 is in force."), said::toString);
                assertEquals(
                        200, at(replica, stefan).get("/api/governance/releases").statusCode());
            }
            assertTrue(watchman.sawOneAway(), "neither was seen to start anew");
            assertEquals(0, watchman.sawBothAway(), "they start anew one after the other");
        }
    }

    @Test
    @Order(3)
    void oneKilledUnderLoad_losesNothingAndDoesNothingTwice() throws Exception {
        new ReplicaStorm(place, one, other, 17).rounds(1);
    }

    /** The drill: a backup while both serve, restored into another database; nobody is signed in there. */
    @Test
    @Order(3)
    void aBackupMadeWhileBothServe_isRestoredWhole_withoutSessions() throws Exception {
        Browser here = signedIn(one, "robin");
        Path archive = folder.resolve("drill.zip");
        String elsewhere = Engine.POSTGRESQL.freshPlace(folder);
        try (Store store = Store.existing(place, Clock.systemUTC());
                Store restored = Store.open(elsewhere, Clock.systemUTC());
                OutputStream out = Files.newOutputStream(archive)) {
            Backup made = store.backUp(SETTING_UP, out);
            assertEquals(made, restored.restore(SETTING_UP, archive, Optional.of(made.head())));
            assertEquals(List.of(), restored.audit().verify(made.head()).faults());
            assertEquals(
                    store.releases().one("1.0.0").orElseThrow().digest(),
                    restored.releases().one("1.0.0").orElseThrow().digest());
        }
        assertEquals(200, at(other, here).get("/api/cases").statusCode());
        try (Replica there = new Replica(elsewhere, folder)) {
            there.up();
            assertEquals(401, at(there, here).get("/api/cases").statusCode());
            assertEquals(200, signedIn(there, "robin").get("/api/cases").statusCode());
        }
    }

    /** So many rounds by -Dtunica.rounds=, usually 20. */
    @Test
    @Order(4)
    @Tag("deep")
    void oneKilledUnderLoad_ofManyTimes_losesNothing() throws Exception {
        ReplicaStorm storm = new ReplicaStorm(place, one, other, 23);
        storm.rounds(Integer.getInteger("tunica.rounds", 20));
        assertNotEquals(0, storm.mended(), "no kill ever hit a request: the storm is too gentle");
    }
}
