package org.tunica.office;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.Tunica;
import org.tunica.proposal.CheckedChange;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Engines;
import org.tunica.releases.JudgeDesk;
import org.tunica.releases.Program;
import org.tunica.releases.ReleaseDesk;
import org.tunica.releases.ReleaseRecords;
import org.tunica.releases.Shadow;
import org.tunica.releases.SigningDesk;
import org.tunica.releases.WatchDesk;
import org.tunica.review.Probe;
import org.tunica.store.Store;
import org.tunica.workroom.Draft;
import org.tunica.workroom.ReleasePress;
import org.tunica.workroom.ReplayRoom;
import org.tunica.workroom.Reviews;
import org.tunica.workroom.Workroom;

/** Every desk these pages go to. One for a server. */
final class Desks implements AutoCloseable {
    private static final int MOST_CHECKED = 50;

    private final Store store;
    private final Clock clock;
    private final Engines engines;
    private final Reviews reviews = new Reviews();
    private final ReplayRoom replays;
    private final Map<String, CheckedChange> checked = new ConcurrentHashMap<>();
    private final Map<String, List<Probe.Outcome>> probed = new ConcurrentHashMap<>();

    Desks(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
        this.engines = new Engines(new ReleaseRecords(store), clock, Program.running());
        this.replays = ReplayRoom.of(store, engines, reviews, clock);
    }

    Store store() {
        return store;
    }

    Instant moment() {
        return clock.instant();
    }

    LocalDate today() {
        return LocalDate.ofInstant(moment(), ZoneOffset.UTC);
    }

    /** What is in force now, or the program's own rules. */
    Engines.Engine inForce() {
        return engines.inForce();
    }

    ReleaseRecords records() {
        return new ReleaseRecords(store);
    }

    ReleaseDesk releases() {
        return new ReleaseDesk(store, clock);
    }

    SigningDesk signing() {
        return new SigningDesk(store, clock);
    }

    ChangeDesk changes() {
        return new ChangeDesk(store, engines);
    }

    WatchDesk watch() {
        return new WatchDesk(store, engines, clock);
    }

    JudgeDesk judges() {
        return new JudgeDesk(store);
    }

    Shadow shadow() {
        return new Shadow(store, engines);
    }

    Workroom workroom() {
        return new Workroom(store, changes(), reviews, clock);
    }

    ReleasePress press() {
        return new ReleasePress(changes(), reviews, Program.running(), clock);
    }

    Reviews reviews() {
        return reviews;
    }

    ReplayRoom replays() {
        return replays;
    }

    /** What the engine says at every boundary of every rule; found once for the same rules. */
    List<Probe.Outcome> probed(Tunica tunica) {
        return probed.computeIfAbsent(
                tunica.release().digest(), digest -> tunica.review().probed());
    }

    /** A working copy with its checks, when exactly this was checked today. */
    Optional<CheckedChange> checkedToday(Draft draft) {
        return Optional.ofNullable(checked.get(key(draft)));
    }

    /** A working copy with its checks; what was checked today and not edited since is not checked again. */
    CheckedChange checked(Draft draft) {
        if (checked.size() > MOST_CHECKED) {
            checked.clear();
        }
        return checked.computeIfAbsent(key(draft), same -> workroom().checked(draft));
    }

    private String key(Draft draft) {
        return draft.number() + today() + Draft.mark(draft.texts().toString());
    }

    @Override
    public void close() {
        replays.close();
    }
}
