package org.tunica.governance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.FaultyInput;
import org.tunica.signing.KnownKey;
import org.tunica.signing.Purpose;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningKeys;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.signing.Withdrawal;

/** Who may sign, and what keeps a signature from counting. */
class SignOffTest {
    private static final Signatures NONE = new Signatures(List.of());

    private final Draft draft = new Draft();

    @Test
    void aReviewerAndTwoPeopleOfTwoPosts_areEnough() {
        SignOff signOff = judged(draft.signed());
        assertTrue(signOff.complete(), () -> signOff.missing().toString());
        assertEquals(3, signOff.counted().size());
        assertEquals(List.of(), signOff.faults());
    }

    @Test
    void withoutAnySignature_itIsToldWhatIsMissing() {
        assertEquals(
                List.of(
                        "nobody has acknowledged its replay",
                        "no clinical lead has signed it",
                        "no safety officer has signed it"),
                judged(NONE).missing());
    }

    @Test
    void halfSigned_isNotComplete() {
        for (Signature left : draft.signed().list()) {
            Signatures two = new Signatures(draft.signed().list().stream()
                    .filter(other -> !other.equals(left))
                    .toList());
            assertEquals(1, judged(two).missing().size());
        }
    }

    @Test
    void theAuthor_neitherReviewsNorSigns() {
        draft.known.replaceAll(key -> key.person().equals("alma") ? as(key, SigningRole.CLINICAL_LEAD) : key);
        refused(NONE, draft.sign("alma", SigningRole.REVIEWER), "alma is an author of this release");
        refused(
                acknowledgedOnly(),
                draft.sign("alma", SigningRole.CLINICAL_LEAD),
                "clinical lead alma: alma is an author of this release; its author neither reviews nor signs it");
    }

    @Test
    void theAuthorUnderASecondName_isKnownByTheKey() {
        SigningKey pen = draft.hands.get("alma");
        draft.known.add(
                new KnownKey("a.second", "k1", pen.publicKey(), Set.of(SigningRole.CLINICAL_LEAD), Optional.empty()));
        SigningKey secret = SigningKeys.renamed(pen, "a.second");
        draft.hands.put("a.second", secret);
        refused(
                acknowledgedOnly(),
                draft.sign("a.second", SigningRole.CLINICAL_LEAD),
                "its key is in more than one hand: a.second, alma");
    }

    @Test
    void theAuthorUnderASecondNameWithANewKey_isKnownByTheOldOne() {
        draft.person("a.second", Set.of(SigningRole.CLINICAL_LEAD));
        draft.known.add(new KnownKey(
                "a.second",
                "old",
                draft.hands.get("alma").publicKey(),
                Set.of(),
                Optional.of(new Withdrawal(Draft.AT, Withdrawal.Reason.NO_LONGER_USED))));
        refused(
                acknowledgedOnly(),
                draft.sign("a.second", SigningRole.CLINICAL_LEAD),
                "a.second holds a key of an author");
    }

    @Test
    void onePerson_signsOnce() {
        draft.known.replaceAll(key ->
                key.person().equals("clara") ? as(key, SigningRole.CLINICAL_LEAD, SigningRole.SAFETY_OFFICER) : key);
        Signatures once = acknowledgedOnly().with(draft.sign("clara", SigningRole.CLINICAL_LEAD));
        refused(
                once,
                draft.sign("clara", SigningRole.SAFETY_OFFICER),
                "clara has signed already, as clinical lead; two people sign");
        refused(once, draft.sign("clara", SigningRole.CLINICAL_LEAD), "clara has signed already");
        assertEquals(
                List.of("no safety officer has signed it"),
                judged(once.with(draft.sign("clara", SigningRole.SAFETY_OFFICER)))
                        .missing());
    }

    @Test
    void aPost_isFilledOnce() {
        draft.person("carl", Set.of(SigningRole.CLINICAL_LEAD));
        refused(
                acknowledgedOnly().with(draft.sign("clara", SigningRole.CLINICAL_LEAD)),
                draft.sign("carl", SigningRole.CLINICAL_LEAD),
                "clara has signed as clinical lead already");
    }

    @Test
    void onlyThePostOfTheKey_canBeSigned() {
        refused(acknowledgedOnly(), draft.sign("clara", SigningRole.SAFETY_OFFICER), "clara is no safety officer");
    }

    @Test
    void nobodySigns_beforeTheReplayWasRead() {
        refused(NONE, draft.sign("clara", SigningRole.CLINICAL_LEAD), "nobody has acknowledged the replay yet");
    }

    @Test
    void aSignature_countsForNothingElse() {
        Signature good = draft.sign("clara", SigningRole.CLINICAL_LEAD);
        Statement seen = good.statement();
        refused(moved(seen, seen.purpose(), "1.0.1", seen.digest()), "was given for release 1.0.1");
        refused(
                moved(seen, seen.purpose(), "1.0.0", "sha256:" + "a".repeat(64)),
                "was given for other bytes than these");
        refused(moved(seen, Purpose.ACKNOWLEDGE_REPLAY, "1.0.0", seen.digest()), "a reviewer acknowledges a replay");
        refused(
                new Signature(
                        seen, draft.sign("stefan", SigningRole.SAFETY_OFFICER).value()),
                "does not hold");
        Signature replay = draft.acknowledged();
        Statement other = new Statement(
                Purpose.ACKNOWLEDGE_REPLAY,
                "1.0.0",
                "sha256:" + "b".repeat(64),
                "rosa",
                SigningRole.REVIEWER,
                "k1",
                Draft.AT);
        refused(NONE, draft.hands.get("rosa").sign(other), "was given for another replay");
        assertTrue(judged(new Signatures(List.of(replay))).counted().contains(replay));
    }

    @Test
    void aKeyNobodyTrusts_signsNothing() {
        Signature signature = draft.sign("stefan", SigningRole.SAFETY_OFFICER);
        draft.known.removeIf(key -> key.person().equals("stefan"));
        refused(acknowledgedOnly(), signature, "its key k1 is not among the keys that are trusted");
    }

    @Test
    void aKeyLaidAsideLater_keepsWhatItSigned() {
        Signatures signed = draft.signed();
        draft.withdraw("clara", Withdrawal.Reason.NO_LONGER_USED, Draft.AT.plusSeconds(1));
        assertTrue(judged(signed).complete());
        draft.withdraw("clara", Withdrawal.Reason.NO_LONGER_USED, Draft.AT);
        assertFalse(judged(signed).complete());
    }

    @Test
    void aKeyInOtherHands_voidsWhatItEverSignedAndAnotherMaySignAnew() {
        Signatures signed = draft.signed();
        draft.withdraw("clara", Withdrawal.Reason.COMPROMISED, Draft.AT.plusSeconds(86_400));
        SignOff signOff = judged(signed);
        assertEquals(List.of("no clinical lead has signed it"), signOff.missing());
        assertEquals(
                "clinical lead clara: its key k1 was withdrawn: compromised",
                signOff.faults().get(0).toString());
        draft.person("carl", Set.of(SigningRole.CLINICAL_LEAD));
        Signature anew = draft.sign("carl", SigningRole.CLINICAL_LEAD);
        judged(signed).mustAccept(anew);
        assertFalse(judged(signed).complete());
        assertTrue(SignOff.of(draft.files.manifest(), signed.with(anew), draft.ring())
                .complete());
    }

    @Test
    void signatures_areReadAsTheyWereWritten() {
        Signatures signed = draft.signed();
        assertEquals(signed, Signatures.read("signatures", signed.toJson()));
        assertThrows(FaultyInput.class, () -> Signatures.read("signatures", "{\"format\":\"tunica-signatures/1\"}"));
    }

    private Signatures acknowledgedOnly() {
        return new Signatures(List.of(draft.acknowledged()));
    }

    private Signature moved(Statement from, Purpose purpose, String release, String digest) {
        return draft.hands
                .get(from.person())
                .sign(new Statement(purpose, release, digest, from.person(), from.role(), "k1", from.at()));
    }

    private void refused(Signature signature, String says) {
        refused(acknowledgedOnly(), signature, says);
    }

    private void refused(Signatures before, Signature signature, String says) {
        FaultyInput fault = assertThrows(FaultyInput.class, () -> judged(before).mustAccept(signature));
        assertTrue(fault.getMessage().contains(says), fault::getMessage);
        assertFalse(judged(before.with(signature)).complete());
    }

    private SignOff judged(Signatures signatures) {
        return SignOff.of(draft.files.manifest(), signatures, draft.ring());
    }

    private static KnownKey as(KnownKey key, SigningRole... roles) {
        return new KnownKey(key.person(), key.keyId(), key.publicKey(), Set.of(roles), key.withdrawn());
    }
}
