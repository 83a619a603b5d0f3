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
    private final AtomicReference<Optional<Waiting>> waiting = new AtomicReference<>(Optional.empty());

    /** When a link makes an administrator. */
    private enum When {
        NOBODY_IS_KNOWN,
        ANY_TIME
    }

    private record Waiting(WaitingLink link, When when) {}

    /** @param linkLife how long the link can be used */
    public FirstStart(Store store, Accounts accounts, Duration linkLife, Clock clock) {
        this.store = store;
        this.accounts = accounts;
        this.linkLife = linkLife;
        this.clock = clock;
    }

    /** A fresh link that makes an administrator, unless somebody is known already; one before it ends. */
    public Optional<GivenLink> link() {
        return anybodyKnown() ? Optional.empty() : Optional.of(given(When.NOBODY_IS_KNOWN));
    }

    /** A fresh link that makes another administrator, for when none of them can sign in any more; one before it ends. */
    public GivenLink linkForAnother() {
        return given(When.ANY_TIME);
    }

    private GivenLink given(When when) {
        String secret = Secret.fresh();
        WaitingLink link =
                new WaitingLink(Secret.digest(secret), clock.instant().plus(linkLife));
        waiting.set(Optional.of(new Waiting(link, when)));
        return new GivenLink("/first-start/" + secret, link.until());
    }

    private boolean anybodyKnown() {
        return !store.users().all().isEmpty();
    }

    /** Whether the link can still be used. */
    public boolean opens(String secret) {
        return waiting.get()
                .filter(given -> given.link().opens(secret, clock.instant()))
                .filter(given -> given.when() == When.ANY_TIME || !anybodyKnown())
                .isPresent();
    }

    /**
     * Makes the administrator; the link ends.
     *
     * @throws LinkRefused when the link cannot be used
     * @throws org.tunica.casefile.FaultyInput with everything that is wrong with name and password
     * @throws org.tunica.store.OutOfDate when there is a user of that name
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
        // one at a time, so that of several who hold the link one alone gets through
        store.together(() -> {
            if (!opens(secret)) {
                throw new LinkRefused();
            }
            User made = store.users().save(new Actor(name), administrator);
            waiting.set(Optional.empty());
            return made;
        });
    }
}
