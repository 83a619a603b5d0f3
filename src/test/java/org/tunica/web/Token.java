package org.tunica.web;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JOSEObjectType;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.JWSSigner;
import com.nimbusds.jose.crypto.MACSigner;
import com.nimbusds.jose.crypto.factories.DefaultJWSSignerFactory;
import com.nimbusds.jose.jwk.JWK;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.PlainJWT;
import com.nimbusds.jwt.SignedJWT;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A token as the invented record system of Larkspur signs it, with whatever is to be wrong with it. */
public final class Token {
    public static final String ISSUER = "https://records.larkspur.example";
    private static final Duration LIFE = Duration.ofMinutes(5);

    private JWK key = Keys.CURVED;
    private JWSHeader.Builder header =
            new JWSHeader.Builder(JWSAlgorithm.ES384).type(JOSEObjectType.JWT).keyID("k1");
    private JWTClaimsSet.Builder claims;

    private Token(String audience, Instant now) {
        claims = new JWTClaimsSet.Builder()
                .issuer(ISSUER)
                .audience(audience)
                .issueTime(Date.from(now))
                .expirationTime(Date.from(now.plus(LIFE)))
                .jwtID(UUID.randomUUID().toString());
    }

    /** One that is sound. */
    public static Token sound(String audience, Instant now) {
        return new Token(audience, now);
    }

    /** The same signed by another key. */
    public Token by(JWK other, JWSAlgorithm algorithm) {
        key = other;
        header = new JWSHeader.Builder(algorithm).type(JOSEObjectType.JWT).keyID(other.getKeyID());
        return this;
    }

    /** The same with another header. */
    public Token head(UnaryOperator<JWSHeader.Builder> change) {
        header = change.apply(header);
        return this;
    }

    /** The same saying something else. */
    public Token says(UnaryOperator<JWTClaimsSet.Builder> change) {
        claims = change.apply(claims);
        return this;
    }

    /** As it travels without a signature. */
    public String withoutSignature() {
        return new PlainJWT(claims.build()).serialize();
    }

    /** As it travels when the public key was taken for a secret that is shared. */
    public String sharedSecret() {
        try {
            SignedJWT jwt = new SignedJWT(
                    new JWSHeader.Builder(JWSAlgorithm.HS256).keyID("k1").build(), claims.build());
            jwt.sign(new MACSigner(Keys.CURVED.toECPublicKey().getEncoded()));
            return jwt.serialize();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    /** As it travels. */
    public String signed() {
        try {
            SignedJWT jwt = new SignedJWT(header.build(), claims.build());
            JWSSigner signer = new DefaultJWSSignerFactory()
                    .createJWSSigner(key, header.build().getAlgorithm());
            jwt.sign(signer);
            return jwt.serialize();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }
}
