package org.tunica.releases;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.tunica.store.Store;

/** Puts a release in force, in a process of its own that dies at the n-th look at the clock. */
final class HaltedActivation {
    /** What a shell reports of a process that was killed. */
    static final int KILLED = 137;

    private HaltedActivation() {}

    /** @param args the place, the version, and at which look at the clock to die */
    public static void main(String[] args) {
        DeadlyClock clock = new DeadlyClock(Integer.parseInt(args[2]));
        try (Store store = Store.open(args[0], clock)) {
            new ReleaseDesk(store, clock, bundle -> {}).activate(Office.BY, args[1]);
            System.out.println("acknowledged");
        }
    }

    private static final class DeadlyClock extends Clock {
        private int looks;

        DeadlyClock(int looks) {
            this.looks = looks;
        }

        @Override
        public Instant instant() {
            looks--;
            if (looks == 0) {
                Runtime.getRuntime().halt(KILLED);
            }
            return Office.START.plusSeconds(86_400);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
