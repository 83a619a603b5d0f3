package org.tunica.signing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a signature covers. */
class SignatureTest {
    private static final Instant MORNING = Instant.parse("2026-03-01T08:00:00Z");
    private static final String DIGEST = "sha256:" + "0".repeat(63);
    private static final SigningKey KEY = SigningKey.fresh("anna", "k1");
    private static final Statement SEEN =
            new Statement(Purpose.SIGN_OFF, "1.0.0", DIGEST + "1", "anna", SigningRole.CLINICAL_LEAD, "k1", MORNING);

    static Stream<Statement> moved() {
        return Stream.of(
                new Statement(Purpose.ACKNOWLEDGE_REPLAY, "1.0.0", SEEN.digest(), "anna", SEEN.role(), "k1", MORNING),
                new Statement(SEEN.purpose(), "1.0.1", SEEN.digest(), "anna", SEEN.role(), "k1", MORNING),
                new Statement(SEEN.purpose(), "1.0.0", DIGEST + "2", "anna", SEEN.role(), "k1", MORNING),
                new Statement(SEEN.purpose(), "1.0.0", SEEN.digest(), "bella", SEEN.role(), "k1", MORNING),
                new Statement(
                        SEEN.purpose(), "1.0.0", SEEN.digest(), "anna", SigningRole.SAFETY_OFFICER, "k1", MORNING),
                new Statement(SEEN.purpose(), "1.0.0", SEEN.digest(), "anna", SEEN.role(), "k2", MORNING),
                new Statement(
                        SEEN.purpose(), "1.0.0", SEEN.digest(), "anna", SEEN.role(), "k1", MORNING.plusSeconds(1)));
    }

    @ParameterizedTest
    @MethodSource("moved")
    void movedToAnythingElse_itDoesNotHold(Statement elsewhere) {
        Signature signature = KEY.sign(SEEN);
        assertTrue(signature.holdsUnder(KEY.publicKey()));
        assertFalse(new Signature(elsewhere, signature.value()).holdsUnder(KEY.publicKey()));
    }

    @Test
    void underAnotherKeyOrChanged_itDoesNotHold() {
        Signature signature = KEY.sign(SEEN);
        assertFalse(signature.holdsUnder(SigningKey.fresh("anna", "k1").publicKey()));
        assertFalse(signature.holdsUnder("no key"));
        assertFalse(new Signature(SEEN, "no base64!").holdsUnder(KEY.publicKey()));
        assertFalse(new Signature(SEEN, "AAAA").holdsUnder(KEY.publicKey()));
    }

    @Test
    void theTextThatIsSigned_isSevenFieldsUnderOneHead() {
        assertEquals(
                "tunica-signature/1\npurpose sign-off\nrelease 1.0.0\ndigest " + SEEN.digest()
                        + "\nperson anna\nrole clinical-lead\nkey k1\nat 2026-03-01T08:00:00Z\n",
                SEEN.text());
    }

    @Test
    void noField_canHoldALineOfAnother() {
        for (String name : List.of("anna\nrole safety-officer", "", "anna berg")) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new Statement(
                            Purpose.SIGN_OFF, "1.0.0", SEEN.digest(), name, SigningRole.REVIEWER, "k1", MORNING));
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> new Statement(
                        Purpose.SIGN_OFF, "1.0.0", "sha256:12", "anna", SigningRole.REVIEWER, "k1", MORNING));
    }

    @Test
    void aKeyThatWasWithdrawn_keepsWhatItSignedBefore() {
        Withdrawal laidAside = new Withdrawal(MORNING, Withdrawal.Reason.NO_LONGER_USED);
        assertTrue(key(laidAside).counted(MORNING.minusSeconds(1)));
        assertFalse(key(laidAside).counted(MORNING));
        Withdrawal stolen = new Withdrawal(MORNING, Withdrawal.Reason.COMPROMISED);
        assertFalse(key(stolen).counted(MORNING.minusSeconds(86_400)));
    }

    @Test
    void aRing_readsWhatItWrote() {
        KeyRing ring = new KeyRing(List.of(
                key(new Withdrawal(MORNING, Withdrawal.Reason.LOST)),
                new KnownKey("bella", "k1", KEY.publicKey(), Set.of(), Optional.empty())));
        byte[] json = ring.toJson().getBytes(StandardCharsets.UTF_8);
        assertEquals(ring, KeyRing.read("keys", json));
        assertEquals(Set.of("anna", "bella"), ring.holders(KEY.publicKey()));
    }

    private static KnownKey key(Withdrawal end) {
        return new KnownKey("anna", "k1", KEY.publicKey(), Set.of(SigningRole.CLINICAL_LEAD), Optional.of(end));
    }
}
