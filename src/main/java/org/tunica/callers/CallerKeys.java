package org.tunica.callers;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.jwk.JWKSelector;
import com.nimbusds.jose.jwk.source.JWKSource;
import com.nimbusds.jose.jwk.source.JWKSourceBuilder;
import com.nimbusds.jose.proc.BadJOSEException;
import com.nimbusds.jose.proc.JWSVerificationKeySelector;
import com.nimbusds.jose.proc.SecurityContext;
import com.nimbusds.jwt.SignedJWT;
import com.nimbusds.jwt.proc.DefaultJWTProcessor;
import java.net.MalformedURLException;
import java.net.URI;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The public keys of one caller, known or fetched and kept for a while. */
final class CallerKeys {
    private static final long KEPT_MS = 5 * 60_000;
    private static final long LONGEST_WAIT_MS = 3_000;

    private final Map<String, DefaultJWTProcessor<SecurityContext>> byAddress = new LinkedHashMap<>();

    private CallerKeys() {}

    static CallerKeys of(Caller caller) {
        CallerKeys keys = new CallerKeys();
        caller.keys().ifPresent(set -> keys.byAddress.put("", processor(KnownKeys.of(set))));
        caller.keyAddresses().forEach(address -> keys.byAddress.put(address, processor(fetched(address))));
        return keys;
    }

    /**
     * Holds the signature of a token against the keys.
     *
     * @param address which the token names and which is one of the caller's; without one its first is taken
     * @throws BadJOSEException when none of them made it
     * @throws JOSEException when they cannot be had
     */
    void verify(Optional<String> address, SignedJWT jwt) throws BadJOSEException, JOSEException {
        String from = address.orElseGet(() -> byAddress.keySet().iterator().next());
        byAddress.get(from).process(jwt, null);
    }

    private static DefaultJWTProcessor<SecurityContext> processor(JWKSource<SecurityContext> keys) {
        DefaultJWTProcessor<SecurityContext> processor = new DefaultJWTProcessor<>();
        processor.setJWSKeySelector(new JWSVerificationKeySelector<>(TokenHeader.ALGORITHMS, strong(keys)));
        processor.setJWTClaimsSetVerifier((claims, context) -> {}); // the claims are looked at before
        return processor;
    }

    private static JWKSource<SecurityContext> strong(JWKSource<SecurityContext> keys) {
        return (JWKSelector selector, SecurityContext context) ->
                keys.get(selector, context).stream().filter(KnownKeys::usable).toList();
    }

    private static JWKSource<SecurityContext> fetched(String address) {
        try {
            return JWKSourceBuilder.create(URI.create(address).toURL(), new KeyFetch())
                    .cache(KEPT_MS, LONGEST_WAIT_MS)
                    .refreshAheadCache(false)
                    .retrying(false)
                    .build();
        } catch (MalformedURLException e) {
            throw new IllegalArgumentException("an address that was found faulty", e);
        }
    }
}
