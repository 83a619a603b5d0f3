package org.tunica.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Users in the table of that name. */
final class SqlUsers implements Users {
    private static final String NAME = "[a-z0-9][a-z0-9._@-]{0,63}";

    private final Pen pen;
    private final Shelf shelf;
    private final SqlUserKeys keys;
    private final Clock clock;

    SqlUsers(Pen pen, Shelf shelf, SqlUserKeys keys, Clock clock) {
        this.pen = pen;
        this.shelf = shelf;
        this.keys = keys;
        this.clock = clock;
    }

    @Override
    public User save(Actor by, User user) {
        Texts.shaped("user", user.name(), NAME);
        Texts.kept("user " + user.name(), user.passwordHash());
        return pen.write(() -> {
            long latest = find(user.name()).map(User::version).orElse(0L);
            if (latest != user.version()) {
                throw new OutOfDate("user " + user.name() + ": version " + latest
                        + " is the latest, this was made from version " + user.version());
            }
            return put(by, latest == 0 ? Act.USER_ADDED : Act.USER_CHANGED, user);
        });
    }

    private User put(Actor by, Act act, User user) {
        long version = user.version() + 1;
        pen.replace(
                by,
                act,
                Table.USERS,
                List.of(
                        user.name(),
                        Long.toString(version),
                        user.state().word(),
                        Words.written(user.roles()),
                        user.passwordHash(),
                        Long.toString(user.failedSignIns()),
                        Long.toString(
                                user.lockedUntil().map(Instant::toEpochMilli).orElse(0L))));
        return find(user.name()).orElseThrow();
    }

    @Override
    public User signedIn(String name) {
        return pen.write(() -> put(new Actor(name), Act.SIGNED_IN, known(name).signIns(0, Optional.empty())));
    }

    @Override
    public User signInFailed(String name, int most, Duration lock) {
        return pen.write(() -> {
            User user = known(name);
            long failed = user.failedSignIns() + 1;
            User counted = failed < most
                    ? user.signIns(failed, user.lockedUntil())
                    : user.signIns(0, Optional.of(clock.instant().plus(lock)));
            return put(new Actor(name), Act.SIGN_IN_FAILED, counted);
        });
    }

    private User known(String name) {
        return find(name).orElseThrow(() -> Texts.fault("user " + name, "there is none of that name"));
    }

    @Override
    public Optional<User> find(String name) {
        return shelf.one("t.name = ?", name).map(SqlUsers::of);
    }

    @Override
    public List<User> all() {
        return shelf.many("t.audit_number > 0 order by t.audit_number desc").stream()
                .map(SqlUsers::of)
                .toList();
    }

    private static User of(Shelf.Kept kept) {
        Row row = kept.row();
        long locked = row.number("locked_until_ms");
        return new User(
                row.text("name"),
                row.number("version"),
                Words.of(UserState.class, row.text("state")),
                Words.setOf(Role.class, row.text("roles")),
                row.text("password_hash"),
                row.number("failed_sign_ins"),
                locked == 0 ? Optional.empty() : Optional.of(Instant.ofEpochMilli(locked)));
    }

    @Override
    public UserKey addKey(Actor by, UserKey key) {
        return pen.write(() -> {
            known(key.user());
            return keys.add(by, key);
        });
    }

    @Override
    public UserKey withdrawKey(Actor by, String user, String keyId) {
        return keys.withdraw(by, user, keyId);
    }

    @Override
    public UserKey withdrawKey(Actor by, String user, String keyId, KeyEnd why) {
        return keys.withdraw(by, user, keyId, why);
    }

    @Override
    public List<KeptKey> everyKey() {
        return keys.every();
    }

    @Override
    public List<UserKey> keys(String user) {
        return keys.of(user);
    }
}
