package org.tunica.web;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;

/** A running server of an invented clinic, with users of every role. */
public final class Clinic implements AutoCloseable {
    static final String PASSWORD = "seven quiet herons";

    /** Cheap hashes: a test signs in often. */
    static final SignInRules RULES = new SignInRules(
            3,
            Duration.ofMinutes(15),
            Duration.ofMinutes(15),
            Duration.ofHours(12),
            Duration.ofHours(24),
            Duration.ofHours(1),
            4);

    private static final String HASH = new PasswordHashing(4).of(PASSWORD);
    private static final Actor SETTING_UP = new Actor("command-line");

    public final MovableClock clock = new MovableClock();
    public final Store store;
    final WebServer server;

    private Clinic(Function<Clock, Store> opening, UnaryOperator<ServerSettings> settings) {
        this.store = opening.apply(clock);
        this.server = WebServer.start(Tunica.shipped(), store, settings.apply(usual()), clock);
    }

    public static Clinic open(Path folder) {
        return at(folder.toString(), settings -> settings);
    }

    public static Clinic at(String place, UnaryOperator<ServerSettings> settings) {
        return new Clinic(clock -> Store.open(place, clock), settings);
    }

    /** One whose data are in a database, with a folder for what is kept beside them. */
    public static Clinic at(String place, Path beside) {
        return new Clinic(clock -> Store.open(place, beside, clock), settings -> settings);
    }

    static ServerSettings usual() {
        return ServerSettings.usual().with(new Listening("127.0.0.1", 0)).with(RULES);
    }

    /** A user of this name with {@link #PASSWORD}. */
    public User user(String name, Role... roles) {
        return store.users().save(SETTING_UP, User.fresh(name, Set.of(roles), HASH));
    }

    /** Keeps a demo case under another name, as somebody who is none of the users. */
    public void keep(String caseRef, String demo) {
        keep(new Actor("robin"), caseRef, demo, Cases.NONE);
    }

    void keep(Actor by, String caseRef, String demo, long seen) {
        byte[] json = CaseTree.demo(demo).set("caseRef", caseRef).bytes();
        store.cases().save(by, caseRef, seen, new String(json, StandardCharsets.UTF_8));
    }

    /** A browser that has signed in as somebody. */
    public Browser signedIn(String name) throws Exception {
        Browser browser = browser();
        browser.signIn(name, PASSWORD);
        return browser;
    }

    Browser browser() {
        return new Browser(URI.create("http://127.0.0.1:" + server.port()));
    }

    @Override
    public void close() {
        server.close();
        store.close();
    }
}
