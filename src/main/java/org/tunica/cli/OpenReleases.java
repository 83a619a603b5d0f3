package org.tunica.cli;

import java.time.Clock;
import org.tunica.governance.Manifest;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Engines;
import org.tunica.releases.KeyDesk;
import org.tunica.releases.Program;
import org.tunica.releases.ReleaseDesk;
import org.tunica.releases.ReleaseRecords;
import org.tunica.releases.Shadow;
import org.tunica.releases.SigningDesk;
import org.tunica.releases.WatchDesk;
import org.tunica.store.Actor;
import org.tunica.store.Store;
import org.tunica.workroom.ReleasePress;
import org.tunica.workroom.Reviews;
import org.tunica.workroom.Workroom;

/** The releases of a place while a command looks at them. */
final class OpenReleases implements AutoCloseable {
    private final Store store;
    private final Clock clock;
    private final Actor by;

    private OpenReleases(Store store, Clock clock, Actor by) {
        this.store = store;
        this.clock = clock;
        this.by = by;
    }

    /** @throws org.tunica.casefile.FaultyInput when nothing is kept there */
    static OpenReleases at(DataPlace data) {
        Actor by = new Actor(data.actor());
        Clock clock = Clock.systemUTC();
        return new OpenReleases(Store.existing(data.place(), clock), clock, by);
    }

    /** The same for somebody who only asks. */
    static OpenReleases asked(String place) {
        Clock clock = Clock.systemUTC();
        return new OpenReleases(Store.existing(place, clock), clock, new Actor(DataPlace.COMMAND_LINE));
    }

    /** The same for a place that is made when it is not there. */
    static OpenReleases made(DataPlace data) {
        Actor by = new Actor(data.actor());
        Clock clock = Clock.systemUTC();
        return new OpenReleases(Store.open(data.place(), clock), clock, by);
    }

    /** Who acts, in the audit trail. */
    Actor by() {
        return by;
    }

    Store store() {
        return store;
    }

    Clock clock() {
        return clock;
    }

    ReleaseRecords records() {
        return new ReleaseRecords(store);
    }

    ReleaseDesk desk() {
        return new ReleaseDesk(store, clock);
    }

    SigningDesk signing() {
        return new SigningDesk(store, clock);
    }

    KeyDesk keys() {
        return new KeyDesk(store);
    }

    Engines engines() {
        return new Engines(records(), clock, Program.running());
    }

    ReleaseText text() {
        return new ReleaseText(records().timeline(), clock.instant());
    }

    WatchDesk watch() {
        return new WatchDesk(store, engines(), clock);
    }

    ChangeDesk changes() {
        return new ChangeDesk(store, engines());
    }

    ReleasePress press() {
        return new ReleasePress(changes(), new Reviews(), Program.running(), clock);
    }

    Workroom workroom() {
        return new Workroom(store, changes(), new Reviews(), clock);
    }

    /** Where a release stands, on one line. */
    String line(String version) {
        return text().line(records().story(version));
    }

    /** All that is known of a release. */
    String shown(String version) {
        Manifest manifest = records().release(version).files().manifest();
        return text().one(records().story(version), manifest, records().signOff(manifest));
    }

    /** Begins or ends a shadow, or tells what was counted; nothing of a case. */
    String shadow(String version, ShadowAsk ask) {
        if (ask == ShadowAsk.BEGIN) {
            desk().shadow(by, version);
        } else if (ask == ShadowAsk.END) {
            desk().endShadow(by, version);
        }
        return ask == ShadowAsk.COUNTS
                ? ShadowText.of(version, new Shadow(store, engines()).counts(version))
                : line(version);
    }

    @Override
    public void close() {
        store.close();
    }
}
