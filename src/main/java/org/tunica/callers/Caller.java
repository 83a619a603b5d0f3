package org.tunica.callers;

import java.util.List;
import java.util.Optional;

/**
 * A record system that may call.
 *
 * @param name what the site calls it; it stands in the audit trail
 * @param issuer the word by which its tokens name it
 * @param tenant which of several clinics of one issuer; empty where it has only one
 * @param keyAddresses where its public keys may be fetched ({@code jku}); empty when they are known
 * @param keys its public keys as a JSON Web Key Set; empty when they are fetched
 */
public record Caller(
        String name, String issuer, Optional<String> tenant, List<String> keyAddresses, Optional<String> keys) {
    public Caller {
        keyAddresses = List.copyOf(keyAddresses);
    }
}
