package org.tunica.cli;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.tunica.releases.Engines;
import org.tunica.releases.Program;
import org.tunica.releases.ServedRules;
import org.tunica.store.Store;
import org.tunica.store.StoreUnavailable;
import org.tunica.web.Listening;
import org.tunica.web.ServerSettings;
import org.tunica.web.WebServer;

/**
 * A server over the rules in force. When another release comes into force, by hand, by plan or by a rollback, it starts anew
 * with that one at the same address, after the other servers over its database or before them; when the one in force may not
 * be used any more, it ends with the reason.
 */
final class Serving {
    /** How soon a rollback is noticed. */
    private static final Duration LOOK = Duration.ofSeconds(1);

    private final Store store;
    private final Clock clock;
    private final ServerSettings settings;

    /** Hears of each server that is up, and in sentences of the rules it runs. */
    interface Told {
        void up(WebServer server, List<String> rules);
    }

    Serving(Store store, Clock clock, ServerSettings settings) {
        this.store = store;
        this.clock = clock;
        this.settings = settings;
    }

    /**
     * Serves until it is told to end.
     *
     * @throws org.tunica.casefile.FaultyInput when the release in force may not be used
     */
    void until(Stopping stopping, Told told) throws InterruptedException {
        RestartTurn turn = new RestartTurn(store.parts(), clock);
        try (ServedRules rules = new ServedRules(store, clock, Program.running())) {
            ServerSettings here = settings;
            boolean ends = false;
            while (!ends) {
                Engines.Engine engine = rules.inForce();
                try (WebServer server = WebServer.start(engine.tunica(), store, here, clock)) {
                    here = settings.with(new Listening(settings.listening().address(), server.port()));
                    turn.over();
                    told.up(server, says(engine));
                    ends = untilAnother(stopping, rules, engine, turn);
                }
            }
        }
    }

    private static List<String> says(Engines.Engine engine) {
        List<String> says = new ArrayList<>();
        engine.version().ifPresent(version -> says.add("Release " + version + " is in force."));
        says.addAll(engine.notices());
        return says;
    }

    /** Whether it is time to end; if not, another release is in force and it is our turn to start with it. */
    private static boolean untilAnother(Stopping stopping, ServedRules rules, Engines.Engine engine, RestartTurn turn)
            throws InterruptedException {
        while (!stopping.askedWithin(LOOK)) {
            if (another(rules, engine, turn) && turn.comes()) {
                return false;
            }
        }
        return true;
    }

    private static boolean another(ServedRules rules, Engines.Engine engine, RestartTurn turn) {
        try {
            boolean another = !rules.inForce().version().equals(engine.version());
            if (!another) {
                turn.forget();
            }
            return another;
        } catch (StoreUnavailable e) {
            return false; // health tells of it; what is in force does not change by not being read
        }
    }
}
