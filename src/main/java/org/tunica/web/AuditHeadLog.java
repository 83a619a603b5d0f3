package org.tunica.web;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.tunica.store.AuditTrail;
import org.tunica.store.StoreUnavailable;

/**
 * Writes the head of the audit trail to the log at start and stop and once a day. Where logs are gathered elsewhere, the
 * trail up to there cannot be written anew unseen: {@code tunica verify --noted} holds the two against each other.
 */
final class AuditHeadLog implements SmartLifecycle {
    private static final Logger LOG = LoggerFactory.getLogger(AuditHeadLog.class);
    private static final long EVERY_HOURS = 24;

    private final AuditTrail audit;
    private @Nullable ScheduledExecutorService daily;

    AuditHeadLog(AuditTrail audit) {
        this.audit = audit;
    }

    @Override
    public synchronized void start() {
        tell("start");
        ScheduledExecutorService scheduled = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "audit-head");
            thread.setDaemon(true);
            return thread;
        });
        scheduled.scheduleAtFixedRate(() -> tell("daily"), EVERY_HOURS, EVERY_HOURS, TimeUnit.HOURS);
        daily = scheduled;
    }

    /** A store that cannot be reached is told of; the next day is another chance. */
    private void tell(String when) {
        try {
            LOG.info("audit head {} ({})", audit.head(), when);
        } catch (StoreUnavailable e) {
            LOG.error("the audit head cannot be read ({})", when, e);
        }
    }

    /** After the last request has ended: what answers requests has a higher phase, and so stops before. */
    @Override
    public int getPhase() {
        return 0;
    }

    @Override
    public synchronized void stop() {
        if (daily != null) {
            daily.shutdownNow();
            daily = null;
            tell("stop");
        }
    }

    @Override
    public synchronized boolean isRunning() {
        return daily != null;
    }
}
