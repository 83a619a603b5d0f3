package org.tunica.signing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.FaultyInput;

/** A private key on disk. */
class KeyFileTest {
    private static final char[] PASSPHRASE = "eleven green herons ß".toCharArray();

    @Test
    void aSealedKey_opensAndSignsAsBefore() {
        SigningKey key = SigningKey.fresh("anna", "k1");
        KeyFile written = KeyFile.seal(key, PASSPHRASE);
        KeyFile read = read(written.toJson());
        assertEquals(written, read);
        SigningKey opened = read.open(PASSPHRASE);
        assertEquals(key.publicKey(), opened.publicKey());
        Statement statement = statement("anna", "k1");
        assertEquals(key.sign(statement), opened.sign(statement));
        assertTrue(opened.sign(statement).holdsUnder(key.publicKey()));
    }

    @Test
    void theSecret_isNowhereInTheFile() {
        SigningKey key = SigningKey.fresh("anna", "k1");
        String json = KeyFile.seal(key, PASSPHRASE).toJson();
        String secret = Base64.getEncoder().encodeToString(key.secret());
        assertFalse(json.contains(secret.substring(22)));
        assertFalse(key.toString().contains(secret.substring(22)));
        assertNotEquals(json, KeyFile.seal(key, PASSPHRASE).toJson(), "salt and nonce are drawn anew");
    }

    @Test
    void anotherPassphrase_opensNothing() {
        KeyFile file = KeyFile.seal(SigningKey.fresh("anna", "k1"), PASSPHRASE);
        FaultyInput fault = assertThrows(FaultyInput.class, () -> file.open("eleven green herons".toCharArray()));
        assertTrue(fault.getMessage().contains("key k1 of anna: does not open"), fault::getMessage);
    }

    @ParameterizedTest
    @CsvSource({
        "\"anna\", \"bella\"",
        "\"k1\", \"k2\"",
        "600000, 600001",
    })
    void aHeadThatWasChanged_opensNothing(String from, String to) {
        String json = KeyFile.seal(SigningKey.fresh("anna", "k1"), PASSPHRASE).toJson();
        String changed = json.replace(from, to);
        assertNotEquals(json, changed);
        assertThrows(FaultyInput.class, () -> read(changed).open(PASSPHRASE));
    }

    @Test
    void aShortPassphrase_isRefused() {
        SigningKey key = SigningKey.fresh("anna", "k1");
        FaultyInput fault = assertThrows(FaultyInput.class, () -> KeyFile.seal(key, "elevenchars".toCharArray()));
        assertTrue(fault.getMessage().contains("at least 12 characters"), fault::getMessage);
    }

    @Test
    void aNameThatCouldNotBeSigned_isRefused() {
        SigningKey key = SigningKey.fresh("Anna Berg", "k1");
        FaultyInput fault = assertThrows(FaultyInput.class, () -> KeyFile.seal(key, PASSPHRASE));
        assertTrue(fault.getMessage().contains("Anna Berg: is no name"), fault::getMessage);
    }

    @Test
    void everyFaultOfAFile_isTold() {
        FaultyInput fault = assertThrows(
                FaultyInput.class,
                () -> read("{\"format\":\"tunica-key/2\",\"person\":\"anna\",\"key\":\"k1\",\"publicKey\":\"x\","
                        + "\"derivation\":{\"name\":\"none\",\"iterations\":1,\"salt\":\"?\"},"
                        + "\"seal\":{\"name\":\"AES-256-GCM\",\"nonce\":\"AAAA\",\"sealed\":\"AAAA\"},\"more\":1}"));
        String says = fault.getMessage();
        for (String place : new String[] {
            "$.format: must be tunica-key/1",
            "$.derivation.name: must be PBKDF2-HMAC-SHA256",
            "$.derivation.iterations: must be from 600000",
            "$.derivation.salt: is no base64",
            "$.seal.nonce: must be 12 bytes",
            "$.more"
        }) {
            assertTrue(says.contains(place), says);
        }
    }

    @Test
    void aKey_signsForNobodyElse() {
        SigningKey key = SigningKey.fresh("anna", "k1");
        assertThrows(IllegalArgumentException.class, () -> key.sign(statement("bella", "k1")));
        assertThrows(IllegalArgumentException.class, () -> key.sign(statement("anna", "k2")));
    }

    private static Statement statement(String person, String keyId) {
        return new Statement(
                Purpose.SIGN_OFF,
                "1.0.0",
                "sha256:" + "0".repeat(64),
                person,
                SigningRole.CLINICAL_LEAD,
                keyId,
                Instant.parse("2026-03-01T08:00:00Z"));
    }

    private static KeyFile read(String json) {
        return KeyFile.read("key", json.getBytes(StandardCharsets.UTF_8));
    }
}
