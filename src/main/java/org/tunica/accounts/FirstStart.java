package org.tunica.accounts;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.tunica.casefile.Faults;
import org.tunica.store.Actor;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;

/**
 * The time before anybody is known: whoever reads the console of the server becomes its administrator. The digest of the
 * link is in memory alone; the next start gives out another one.
 */
public final class FirstStart {
    private final Store store;
    private final Accounts accounts;
    private final Duration linkLife;
    private final Clock clock;
    private final AtomicReference<Optional<WaitingLink>> waiting = new AtomicReference<>(Optional.empty());

    /** @param linkLife how long the link can be used */
    public FirstStart(Store store, Accounts accounts, Duration linkLife, Clock clock) {
        this.store = store;
        this.accounts = accounts;
        this.linkLife = linkLife;
        this.clock = clock;
    }

    /** A fresh link that makes an administrator, unless somebody is known already; one before it ends. */
    public Optional<GivenLink> link() {
        if (anybodyKnown()) {
            return Optional.empty();
        }
        String secret = Secret.fresh();
        WaitingLink link =
                new WaitingLink(Secret.digest(secret), clock.instant().plus(linkLife));
        waiting.set(Optional.of(link));
        return Optional.of(new GivenLink("/first-start/" + secret, link.until()));
    }

    private boolean anybodyKnown() {
        return !store.users().all().isEmpty();
    }

    /** Whether the link can still be used. */
    public boolean opens(String secret) {
        return waiting.get().filter(link -> link.opens(secret, clock.instant())).isPresent() && !anybodyKnown();
    }

    /**
     * Makes the administrator; the link ends.
     *
     * @throws LinkRefused when the link cannot be used
     * @throws org.tunica.casefile.FaultyInput with everything that is wrong with name and password
     */
    public void makeAdministrator(String secret, String name, String password) {
        if (!opens(secret)) {
            throw new LinkRefused();
        }
        Faults faults = new Faults();
        UserNames.check(name, faults);
        PasswordRules.check(name, password, faults);
        faults.throwIfAny("administrator");
        User administrator = User.fresh(name, Set.of(Role.ADMINISTRATOR), accounts.checkedHash(name, password));
        store.together(() -> {
            if (!opens(secret)) {
                throw new LinkRefused();
            }
            return store.users().save(new Actor(name), administrator);
        });
        waiting.set(Optional.empty());
    }
}
