package org.tunica.store;

import java.util.List;
import java.util.Optional;

/** Public keys of users in the table of that name. */
final class SqlUserKeys {
    private static final String ID = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

    private final Pen pen;
    private final Shelf shelf;
    private final Shelf ends;

    SqlUserKeys(Pen pen, Shelf shelf, Shelf ends) {
        this.pen = pen;
        this.shelf = shelf;
        this.ends = ends;
    }

    UserKey add(Actor by, UserKey key) {
        Texts.shaped("keyId", key.keyId(), ID);
        Texts.kept("key " + key.keyId(), key.purpose());
        Texts.kept("key " + key.keyId(), key.publicKey());
        return pen.write(() -> {
            if (find(key.user(), key.keyId()).isPresent()) {
                throw new OutOfDate("user " + key.user() + " has a key " + key.keyId() + " already");
            }
            return put(by, Act.KEY_ADDED, key);
        });
    }

    UserKey withdraw(Actor by, String user, String keyId) {
        return pen.write(() -> {
            UserKey key = find(user, keyId).orElseThrow(() -> Texts.fault("user " + user, "has no key " + keyId));
            return put(
                    by,
                    Act.KEY_WITHDRAWN,
                    new UserKey(user, keyId, key.purpose(), key.publicKey(), KeyState.WITHDRAWN));
        });
    }

    /** A key that is ended already keeps the moment of its end. */
    UserKey withdraw(Actor by, String user, String keyId, KeyEnd why) {
        return pen.write(() -> {
            UserKey key = find(user, keyId)
                    .filter(found -> found.state() == KeyState.WITHDRAWN)
                    .orElseGet(() -> withdraw(by, user, keyId));
            pen.replace(by, Act.KEY_END_TOLD, Table.KEY_WITHDRAWALS, List.of(user, keyId, why.word()));
            return key;
        });
    }

    List<KeptKey> every() {
        return shelf.many("t.audit_number > 0 order by t.audit_number").stream()
                .map(kept -> new KeptKey(key(kept), kept.stamp(), end(key(kept))))
                .toList();
    }

    private Optional<KeyEnd> end(UserKey key) {
        return ends.one("t.user_name = ? and t.key_id = ?", key.user(), key.keyId())
                .map(kept -> Words.of(KeyEnd.class, kept.row().text("reason")));
    }

    private UserKey put(Actor by, Act act, UserKey key) {
        pen.replace(
                by,
                act,
                Table.USER_KEYS,
                List.of(
                        key.user(),
                        key.keyId(),
                        key.purpose(),
                        key.publicKey(),
                        key.state().word()));
        return key;
    }

    List<UserKey> of(String user) {
        return shelf.many("t.user_name = ? order by t.audit_number", user).stream()
                .map(SqlUserKeys::key)
                .toList();
    }

    private Optional<UserKey> find(String user, String keyId) {
        return shelf.one("t.user_name = ? and t.key_id = ?", user, keyId).map(SqlUserKeys::key);
    }

    private static UserKey key(Shelf.Kept kept) {
        Row row = kept.row();
        return new UserKey(
                row.text("user_name"),
                row.text("key_id"),
                row.text("purpose"),
                row.text("public_key"),
                Words.of(KeyState.class, row.text("state")));
    }
}
