package org.tunica.accounts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.store.Actor;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.UserState;
import org.tunica.store.Users;

/** The users a clinic keeps itself, and their passwords. Safe for several threads. */
public final class Accounts {
    private final Store store;
    private final Users users;
    private final PasswordHash hash;
    private final Duration linkLife;
    private final Clock clock;

    /** @param linkLife how long a link to set a password can be used */
    public Accounts(Store store, PasswordHash hash, Duration linkLife, Clock clock) {
        this.store = store;
        this.users = store.users();
        this.hash = hash;
        this.linkLife = linkLife;
        this.clock = clock;
    }

    /**
     * Adds a user, who sets a password by a link.
     *
     * @throws org.tunica.casefile.FaultyInput with everything that is wrong with name and roles
     * @throws org.tunica.store.OutOfDate when there is one of that name
     */
    public GivenLink add(Actor by, String name, Set<Role> roles) {
        Faults faults = new Faults();
        UserNames.check(name, faults);
        checkRoles(roles, faults);
        faults.throwIfAny("user");
        String secret = Secret.fresh();
        WaitingLink link = waiting(secret);
        users.save(by, User.fresh(name, roles, link.toString()));
        return given(name, secret, link);
    }

    /**
     * Changes what a user may do, or whether the user may come in at all.
     *
     * @param version of the user as it was seen
     * @throws org.tunica.casefile.FaultyInput when there is none, roles conflict, or no administrator would be left
     * @throws org.tunica.store.OutOfDate when somebody changed the user meanwhile
     */
    public User change(Actor by, String name, long version, Set<Role> roles, UserState state) {
        return store.together(() -> {
            User user = known(name);
            Faults faults = new Faults();
            checkRoles(roles, faults);
            User changed = seen(user, version).with(roles).in(state);
            if (administers(user) && !administers(changed) && administrators() == 1) {
                faults.add("user " + name, "is the only administrator; make another one first");
            }
            faults.throwIfAny("user");
            return users.save(by, changed);
        });
    }

    /** The same user as somebody saw it, so that the store tells when that is no longer so. */
    private static User seen(User user, long version) {
        return new User(
                user.name(),
                version,
                user.state(),
                user.roles(),
                user.passwordHash(),
                user.failedSignIns(),
                user.lockedUntil());
    }

    private static boolean administers(User user) {
        return user.state() == UserState.ACTIVE && user.roles().contains(Role.ADMINISTRATOR);
    }

    private long administrators() {
        return users.all().stream().filter(Accounts::administers).count();
    }

    private static void checkRoles(Set<Role> roles, Faults faults) {
        RoleConflicts.of(roles).forEach(conflict -> faults.add("roles", conflict));
    }

    /**
     * Gives a user a new link. The password, or the link before, ends.
     *
     * @throws org.tunica.casefile.FaultyInput when there is no such user
     */
    public GivenLink renew(Actor by, String name) {
        return store.together(() -> {
            String secret = Secret.fresh();
            WaitingLink link = waiting(secret);
            users.save(by, known(name).withPasswordHash(link.toString()));
            return given(name, secret, link);
        });
    }

    private WaitingLink waiting(String secret) {
        return new WaitingLink(Secret.digest(secret), clock.instant().plus(linkLife));
    }

    private static GivenLink given(String name, String secret, WaitingLink link) {
        return new GivenLink("/password/" + name + "/" + secret, link.until());
    }

    /** Whether a link to set a password can still be used. */
    public boolean opens(String name, String secret) {
        return waitingFor(name, secret).isPresent();
    }

    private Optional<User> waitingFor(String name, String secret) {
        Instant now = clock.instant();
        return users.find(name)
                .filter(user -> user.state() == UserState.ACTIVE)
                .filter(user -> WaitingLink.in(user.passwordHash())
                        .filter(link -> link.opens(secret, now))
                        .isPresent());
    }

    /**
     * Sets a password by a link, which ends.
     *
     * @throws LinkRefused when the link cannot be used
     * @throws org.tunica.casefile.FaultyInput with everything that is wrong with the password; the link can be used again
     */
    public void setByLink(String name, String secret, String password) {
        if (!opens(name, secret)) {
            throw new LinkRefused();
        }
        String hashed = checkedHash(name, password);
        store.together(() -> {
            User user = waitingFor(name, secret).orElseThrow(LinkRefused::new);
            return users.save(new Actor(name), user.withPasswordHash(hashed));
        });
    }

    /**
     * Sets another password for whoever knows the one in use.
     *
     * @throws org.tunica.casefile.FaultyInput when the old one is wrong or the new one cannot be
     */
    public void changePassword(String name, String old, String password) {
        User user = known(name);
        Faults faults = new Faults();
        if (!hash.matches(old, user.passwordHash())) {
            faults.add("old password", "is wrong");
        }
        if (old.equals(password)) {
            faults.add("password", "must be another one");
        }
        PasswordRules.check(name, password, faults);
        faults.throwIfAny("password");
        users.save(new Actor(name), user.withPasswordHash(hash.of(password)));
    }

    String checkedHash(String name, String password) {
        Faults faults = new Faults();
        PasswordRules.check(name, password, faults);
        faults.throwIfAny("password");
        return hash.of(password);
    }

    private User known(String name) {
        return users.find(name)
                .orElseThrow(() ->
                        new FaultyInput("user", List.of(new Fault("user " + name, "there is none of that name"))));
    }
}
