package org.tunica.callers;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.proc.BadJOSEException;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import java.text.ParseException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Tells whose a token is, or refuses it. Safe for several threads. */
public final class TokenCheck {
    /** One with a key of 4096 bits has some 1,500 characters. */
    static final int LONGEST = 4_096;

    private static final int LONGEST_ID = 200;

    private final Map<String, Caller> byIssuer;
    private final Map<String, CallerKeys> keys;
    private final TokenTimes times;
    private final SeenTokens seen;

    /**
     * A check for these callers.
     *
     * @param skew how far two clocks may differ
     * @param longestLife of a token
     */
    public TokenCheck(List<Caller> callers, Clock clock, Duration skew, Duration longestLife, SeenTokens seen) {
        this.byIssuer = callers.stream().collect(Collectors.toMap(Caller::issuer, Function.identity()));
        this.keys = callers.stream().collect(Collectors.toMap(Caller::issuer, CallerKeys::of));
        this.times = new TokenTimes(clock, skew, longestLife);
        this.seen = seen;
    }

    /**
     * Whose token it is. A token passes once.
     *
     * @param token as it came, without the word before it
     * @param audience the address that was called, as callers know it
     * @throws TokenRefused with the reason, which is nobody's business but the log's
     */
    public Caller check(String token, String audience) throws TokenRefused {
        SignedJWT jwt = parsed(token);
        TokenHeader.check(jwt.getHeader());
        JWTClaimsSet claims = claims(jwt);
        Caller caller = caller(claims);
        Optional<String> keyAddress = TokenHeader.keyAddress(jwt.getHeader());
        if (keyAddress.isPresent() && !caller.keyAddresses().contains(keyAddress.get())) {
            throw new TokenRefused("the token says its keys lie where the site does not look");
        }
        if (!List.of(audience).equals(claims.getAudience())) {
            throw new TokenRefused("the token is for another address, or for several");
        }
        Instant until = times.check(claims, seen.since());
        if (!caller.tenant().equals(tenant(claims))) {
            throw new TokenRefused("the token is of another tenant");
        }
        verify(caller, keyAddress, jwt);
        once(claims, until);
        return caller;
    }

    private static SignedJWT parsed(String token) throws TokenRefused {
        if (token.length() > LONGEST) {
            throw new TokenRefused("the token is longer than " + LONGEST + " characters");
        }
        try {
            return SignedJWT.parse(token);
        } catch (ParseException | IllegalArgumentException e) {
            throw new TokenRefused("what came is no signed token");
        }
    }

    private static JWTClaimsSet claims(SignedJWT jwt) throws TokenRefused {
        try {
            @Nullable JWTClaimsSet claims = jwt.getJWTClaimsSet();
            if (claims != null) {
                return claims;
            }
        } catch (ParseException e) {
            // told below, the same
        }
        throw new TokenRefused("the claims of the token cannot be read");
    }

    private Caller caller(JWTClaimsSet claims) throws TokenRefused {
        @Nullable Caller caller = byIssuer.get(String.valueOf(claims.getIssuer()));
        if (caller == null) {
            throw new TokenRefused("the token is of an issuer the site does not know");
        }
        return caller;
    }

    private static Optional<String> tenant(JWTClaimsSet claims) throws TokenRefused {
        try {
            return Optional.ofNullable(claims.getStringClaim("tenant"));
        } catch (ParseException e) {
            throw new TokenRefused("the tenant of the token is no text");
        }
    }

    private void verify(Caller caller, Optional<String> keyAddress, SignedJWT jwt) throws TokenRefused {
        try {
            keys.get(caller.issuer()).verify(keyAddress, jwt);
        } catch (BadJOSEException e) {
            throw new TokenRefused("no key of " + caller.name() + " made the signature");
        } catch (JOSEException e) {
            throw new TokenRefused("the keys of " + caller.name() + " cannot be had");
        }
    }

    private void once(JWTClaimsSet claims, Instant until) throws TokenRefused {
        @Nullable String id = claims.getJWTID();
        if (id == null || id.isBlank() || id.length() > LONGEST_ID) {
            throw new TokenRefused("the token has no name of its own");
        }
        if (!seen.firstTime(claims.getIssuer(), id, until)) {
            throw new TokenRefused("the token was seen before");
        }
    }
}
