package org.tunica.callers;

import com.nimbusds.jose.JOSEObjectType;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import java.net.URI;
import java.util.Optional;
import java.util.Set;

/** What the header of a token may say. */
final class TokenHeader {
    static final Set<JWSAlgorithm> ALGORITHMS = Set.of(JWSAlgorithm.ES384, JWSAlgorithm.RS384);

    /** Everything else is refused: a key that travels in a token, where one may be fetched, what must be understood. */
    private static final Set<String> FIELDS = Set.of("alg", "kid", "typ", "jku");

    private TokenHeader() {}

    static void check(JWSHeader header) throws TokenRefused {
        if (!ALGORITHMS.contains(header.getAlgorithm())) {
            throw new TokenRefused("the token is not signed with ES384 or RS384");
        }
        if (!FIELDS.containsAll(header.getIncludedParams())) {
            throw new TokenRefused("the header of the token holds more than alg, kid, typ and jku");
        }
        if (header.getType() != null && !header.getType().equals(JOSEObjectType.JWT)) {
            throw new TokenRefused("the token is of another type than JWT");
        }
        if (header.getKeyID() == null || header.getKeyID().isBlank()) {
            throw new TokenRefused("the token names no key");
        }
    }

    /** Where the token says its keys can be fetched. */
    static Optional<String> keyAddress(JWSHeader header) {
        return Optional.ofNullable(header.getJWKURL()).map(URI::toString);
    }
}
