package org.tunica.web;

import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.tunica.store.Store;
import org.tunica.store.StoreUnavailable;

/** Whether what is kept can be reached, and its tables are those of this program. */
final class StoreHealth implements HealthIndicator {
    private final Store store;

    StoreHealth(Store store) {
        this.store = store;
    }

    @Override
    public Health health() {
        try {
            return store.ready() ? Health.up().build() : Health.outOfService().build();
        } catch (StoreUnavailable e) {
            return Health.down().build();
        }
    }
}
