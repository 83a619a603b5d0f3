package org.tunica.signing;

import java.time.Instant;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A public key with the person it belongs to.
 *
 * @param roles as what its person may sign
 * @param withdrawn empty while the key is in use
 */
public record KnownKey(
        String person, String keyId, String publicKey, Set<SigningRole> roles, Optional<Withdrawal> withdrawn) {
    public KnownKey {
        roles = Collections.unmodifiableSet(new TreeSet<>(roles));
    }

    /** Whether what was signed with it at a moment counts. */
    public boolean counted(Instant at) {
        return withdrawn
                .map(end -> end.reason() != Withdrawal.Reason.COMPROMISED && at.isBefore(end.at()))
                .orElse(true);
    }

    /** The key as it counted at a moment: what came out later is not known yet. */
    KnownKey asOf(Instant moment) {
        Optional<Withdrawal> known = withdrawn
                .filter(end -> !end.at().isAfter(moment))
                .map(end -> new Withdrawal(end.at(), Withdrawal.Reason.NO_LONGER_USED));
        return new KnownKey(person, keyId, publicKey, roles, known);
    }
}
