package org.tunica.releases;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.accounts.RoleConflicts;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.signing.KnownKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Withdrawal;
import org.tunica.store.Actor;
import org.tunica.store.KeyEnd;
import org.tunica.store.Role;
import org.tunica.store.Store;
import org.tunica.store.User;
import org.tunica.store.UserKey;

/** People who write and sign releases, and their public keys. */
public final class KeyDesk {
    private static final Set<Role> SIGNERS = EnumSet.of(Role.CLINICAL_LEAD, Role.SAFETY_OFFICER);

    private final Store store;
    private final ReleaseRecords records;

    /** The keys kept in a store. */
    public KeyDesk(Store store) {
        this.store = store;
        this.records = new ReleaseRecords(store);
    }

    /**
     * Adds a person who does not sign in here.
     *
     * @throws FaultyInput when the roles do not go together
     */
    public User addPerson(Actor by, String name, Set<Role> roles) {
        Faults faults = new Faults();
        RoleConflicts.of(roles).forEach(conflict -> faults.add(name, conflict));
        faults.throwIfAny("person");
        return store.users().save(by, User.fresh(name, roles, ""));
    }

    /**
     * Adds the public key of a person; as what it may sign follows from the posts the person holds now.
     *
     * @throws FaultyInput when there is no such person, or somebody else holds the key
     */
    public KnownKey add(Actor by, String person, String keyId, String publicKey) {
        return store.together(() -> {
            User user = person(person);
            Set<String> others = new TreeSet<>(records.keys().holders(publicKey));
            if (!others.isEmpty()) {
                throw fault(person, "cannot have this key: " + String.join(", ", others) + " has it");
            }
            store.users().addKey(by, new UserKey(person, keyId, purpose(user), publicKey));
            return key(person, keyId);
        });
    }

    private static String purpose(User user) {
        Set<SigningRole> roles = EnumSet.of(SigningRole.REVIEWER);
        user.roles().stream().filter(SIGNERS::contains).forEach(role -> roles.add(SigningRole.valueOf(role.name())));
        return roles.stream().map(SigningRole::word).collect(Collectors.joining(","));
    }

    /**
     * Ends a key. What it signed before stays valid, unless it is in other hands.
     *
     * @throws FaultyInput when there is none of that name
     */
    public KnownKey withdraw(Actor by, String person, String keyId, Withdrawal.Reason reason) {
        return store.together(() -> {
            store.users().withdrawKey(by, person, keyId, KeyEnd.valueOf(reason.name()));
            return key(person, keyId);
        });
    }

    private KnownKey key(String person, String keyId) {
        return records.keys().find(person, keyId).orElseThrow();
    }

    private User person(String name) {
        return store.users().find(name).orElseThrow(() -> fault(name, "there is nobody of that name"));
    }

    private static FaultyInput fault(String person, String says) {
        return new FaultyInput("person", List.of(new Fault(person, says)));
    }
}
