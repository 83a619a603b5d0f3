package org.tunica.signing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Base64;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The platform against published vectors. */
class Ed25519Test {
    /** What stands before the 32 bytes of a key: RFC 8410, sections 4 and 7. */
    private static final String PKCS8 = "302e020100300506032b657004220420";

    private static final String X509 = "302a300506032b6570032100";

    /** RFC 8032, section 7.1, TEST 1 to 3: secret key, public key, message, signature. */
    @ParameterizedTest
    @CsvSource({
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,"
                + "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
                + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd"
                + "25bf5f0595bbe24655141438e7a100b",
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,"
                + "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
                + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c3"
                + "87b2eaeb4302aeeb00d291612bb0c00",
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,"
                + "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
                + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594"
                + "a7c15e9716ed28dc027beceea1ec40a"
    })
    void signsAndVerifiesAsPublished(String secret, String publicKey, String message, String signature) {
        byte[] text = HexFormat.of().parseHex(message);
        byte[] expected = HexFormat.of().parseHex(signature);
        assertArrayEquals(
                expected, Ed25519.sign(Ed25519.privateKey(HexFormat.of().parseHex(PKCS8 + secret)), text));
        String written = Base64.getEncoder().encodeToString(HexFormat.of().parseHex(X509 + publicKey));
        assertTrue(Ed25519.holds(Ed25519.publicKey(written), text, expected));
        expected[3] ^= 1;
        assertFalse(Ed25519.holds(Ed25519.publicKey(written), text, expected));
        assertFalse(Ed25519.holds(Ed25519.publicKey(written), text, new byte[12]));
    }

    @Test
    void aKeyThatIsNone_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Ed25519.publicKey("AAAA"));
        assertThrows(IllegalArgumentException.class, () -> Ed25519.publicKey("no base64"));
        assertThrows(IllegalArgumentException.class, () -> Ed25519.privateKey(new byte[] {1, 2, 3}));
    }

    /** RFC 7914, section 11: PBKDF2-HMAC-SHA256 with 1 and 80,000 iterations. */
    @ParameterizedTest
    @CsvSource({
        "passwd,salt,1,55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317"
                + "c71b845b1e30bd509112041d3a19783",
        "Password,NaCl,80000,4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56a1d425a1225833549adb841b51c9"
                + "b3176a272bdebba1d078478f62b397f33c8d"
    })
    void derivesAsPublished(String passphrase, String salt, int iterations, String expected) {
        byte[] derived = Seal.derived(passphrase.toCharArray(), Ed25519.bytes(salt), iterations, 512);
        assertEquals(expected, HexFormat.of().formatHex(derived));
    }
}
