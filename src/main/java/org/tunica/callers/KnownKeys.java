package org.tunica.callers;

import com.nimbusds.jose.jwk.Curve;
import com.nimbusds.jose.jwk.ECKey;
import com.nimbusds.jose.jwk.JWK;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.source.ImmutableJWKSet;
import com.nimbusds.jose.jwk.source.JWKSource;
import com.nimbusds.jose.proc.SecurityContext;
import java.text.ParseException;
import java.util.ArrayList;
import java.util.List;

/** Public keys written down in a site's settings. */
final class KnownKeys {
    /** Shorter ones count as breakable (NIST SP 800-131A, from memory, unverified). */
    static final int LEAST_RSA_BITS = 2_048;

    private KnownKeys() {}

    /** The keys of a set that has no faults. */
    static JWKSource<SecurityContext> of(String set) {
        try {
            return new ImmutableJWKSet<>(JWKSet.parse(set));
        } catch (ParseException e) {
            throw new IllegalArgumentException("keys that were found faulty", e);
        }
    }

    /** What is wrong with a set. */
    static List<String> faults(String set) {
        List<String> faults = new ArrayList<>();
        try {
            List<JWK> keys = JWKSet.parse(set).getKeys();
            if (keys.isEmpty()) {
                faults.add("must hold at least one key");
            }
            keys.forEach(key -> fault(key, faults));
        } catch (ParseException e) {
            faults.add("must be a JSON Web Key Set: {\"keys\":[...]}");
        }
        return faults;
    }

    private static void fault(JWK key, List<String> faults) {
        String id = key.getKeyID();
        if (id == null || id.isBlank()) {
            faults.add("every key must have a kid");
        }
        if (key.isPrivate()) {
            faults.add("holds a private or shared key; only public keys belong here");
        }
        if (!usable(key)) {
            faults.add("every key must be on the curve P-384 or an RSA key of at least " + LEAST_RSA_BITS + " bits");
        }
    }

    /** Whether a key can sign in one of the two ways that are allowed. */
    static boolean usable(JWK key) {
        return key instanceof ECKey curved
                ? Curve.P_384.equals(curved.getCurve())
                : key instanceof RSAKey && key.size() >= LEAST_RSA_BITS;
    }
}
