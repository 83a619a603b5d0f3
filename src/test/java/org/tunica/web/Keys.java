package org.tunica.web;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.jwk.Curve;
import com.nimbusds.jose.jwk.ECKey;
import com.nimbusds.jose.jwk.JWK;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.ECKeyGenerator;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import java.util.List;

/** Keys of invented record systems, made anew for each run. */
public final class Keys {
    public static final ECKey CURVED = curved("k1", Curve.P_384);
    public static final RSAKey RSA = rsa("k2", 2048);

    /** Published by nobody. */
    public static final ECKey STRANGE = curved("k1", Curve.P_384);

    /** Published, but on another curve and too short. */
    public static final ECKey OTHER_CURVE = curved("k3", Curve.P_256);

    private Keys() {}

    private static ECKey curved(String id, Curve curve) {
        try {
            return new ECKeyGenerator(curve).keyID(id).generate();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    private static RSAKey rsa(String id, int bits) {
        try {
            return new RSAKeyGenerator(bits).keyID(id).generate();
        } catch (JOSEException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A JSON Web Key Set without anything private. */
    public static String published(JWK... keys) {
        return new JWKSet(List.of(keys)).toPublicJWKSet().toString();
    }
}
