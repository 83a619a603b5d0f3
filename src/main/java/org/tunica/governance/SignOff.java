package org.tunica.governance;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.signing.KeyRing;
import org.tunica.signing.KnownKey;
import org.tunica.signing.Purpose;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;

/**
 * Which signatures of a release count, which do not and why, and what is still missing: the replay acknowledged by a
 * reviewer, and two people in two roles who let it pass, none of them an author, no key in two hands.
 */
public final class SignOff {
    private static final Set<SigningRole> NEEDED = EnumSet.of(SigningRole.CLINICAL_LEAD, SigningRole.SAFETY_OFFICER);

    private final Manifest manifest;
    private final String digest;
    private final KeyRing keys;
    private final Map<Signature, Optional<String>> judged = new LinkedHashMap<>();
    private final Map<String, SigningRole> signed = new LinkedHashMap<>();
    private boolean acknowledged;

    private SignOff(Manifest manifest, KeyRing keys) {
        this.manifest = manifest;
        this.digest = manifest.digest();
        this.keys = keys;
    }

    /** Judges signatures, in the order in which they were given. */
    public static SignOff of(Manifest manifest, Signatures signatures, KeyRing keys) {
        SignOff signOff = new SignOff(manifest, keys);
        signatures.list().forEach(signOff::take);
        return signOff;
    }

    private void take(Signature signature) {
        Optional<String> against = against(signature);
        judged.put(signature, against);
        if (against.isEmpty()) {
            if (signature.statement().purpose() == Purpose.ACKNOWLEDGE_REPLAY) {
                acknowledged = true;
            } else {
                signed.put(signature.statement().person(), signature.statement().role());
            }
        }
    }

    /** Why a signature does not count. */
    private Optional<String> against(Signature signature) {
        return aboutSomethingElse(signature.statement())
                .or(() -> ofAKeyThatDoesNotCount(signature))
                .or(() -> ofAPersonWhoMayNot(signature.statement()));
    }

    private Optional<String> aboutSomethingElse(Statement statement) {
        boolean acknowledgement = statement.purpose() == Purpose.ACKNOWLEDGE_REPLAY;
        if (acknowledgement != (statement.role() == SigningRole.REVIEWER)) {
            return Optional.of("a reviewer acknowledges a replay; a clinical lead and a safety officer sign a release");
        }
        if (!statement.release().equals(manifest.version())) {
            return Optional.of("was given for release " + statement.release());
        }
        if (!statement.digest().equals(acknowledgement ? manifest.replay() : digest)) {
            return Optional.of(
                    acknowledgement ? "was given for another replay" : "was given for other bytes than these");
        }
        return Optional.empty();
    }

    private Optional<String> ofAKeyThatDoesNotCount(Signature signature) {
        Statement statement = signature.statement();
        Optional<KnownKey> found = keys.find(statement.person(), statement.keyId());
        if (found.isEmpty()) {
            return Optional.of("its key " + statement.keyId() + " is not among the keys that are trusted");
        }
        KnownKey key = found.get();
        if (!signature.holdsUnder(key.publicKey())) {
            return Optional.of("does not hold: the key did not sign this");
        }
        if (!key.counted(statement.at())) {
            return Optional.of("its key " + statement.keyId() + " was withdrawn: "
                    + key.withdrawn().orElseThrow().reason().word().replace('-', ' '));
        }
        Set<String> holders = new TreeSet<>(keys.holders(key.publicKey()));
        if (holders.size() > 1) {
            return Optional.of("its key is in more than one hand: " + String.join(", ", holders));
        }
        if (NEEDED.contains(statement.role()) && !key.roles().contains(statement.role())) {
            return Optional.of(statement.person() + " is no " + statement.role().words());
        }
        return Optional.empty();
    }

    private Optional<String> ofAPersonWhoMayNot(Statement statement) {
        String person = statement.person();
        if (manifest.authors().contains(person)) {
            return Optional.of(person + " is an author of this release; its author neither reviews nor signs it");
        }
        if (sharesAKeyWithAnAuthor(person)) {
            return Optional.of(person + " holds a key of an author of this release");
        }
        SigningRole earlier = signed.get(person);
        if (statement.purpose() == Purpose.SIGN_OFF && earlier != null) {
            return Optional.of(person + " has signed already, as " + earlier.words() + "; two people sign");
        }
        return Optional.empty();
    }

    private boolean sharesAKeyWithAnAuthor(String person) {
        Set<String> own = new HashSet<>(keys.keysOf(person));
        return manifest.authors().stream()
                .anyMatch(author -> keys.keysOf(author).stream().anyMatch(own::contains));
    }

    /**
     * Ends the work unless one more signature would count and is still wanted.
     *
     * @throws FaultyInput with the reason
     */
    public void mustAccept(Signature signature) {
        Statement statement = signature.statement();
        refuseIf(against(signature), statement);
        if (statement.purpose() == Purpose.SIGN_OFF) {
            refuseIf(
                    acknowledged ? Optional.empty() : Optional.of("nobody has acknowledged the replay yet"), statement);
            refuseIf(
                    signed.entrySet().stream()
                            .filter(other -> other.getValue() == statement.role())
                            .map(other -> other.getKey() + " has signed as "
                                    + statement.role().words() + " already")
                            .findFirst(),
                    statement);
        }
    }

    private static void refuseIf(Optional<String> reason, Statement statement) {
        reason.ifPresent(says -> {
            throw new FaultyInput("signature", List.of(new Fault(place(statement), says)));
        });
    }

    private static String place(Statement statement) {
        return statement.role().words() + " " + statement.person();
    }

    /** Whether nothing is missing. */
    public boolean complete() {
        return missing().isEmpty();
    }

    /** Who still has to sign, in words. */
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (!acknowledged) {
            missing.add("nobody has acknowledged its replay");
        }
        NEEDED.stream()
                .filter(role -> !signed.containsValue(role))
                .forEach(role -> missing.add("no " + role.words() + " has signed it"));
        return missing;
    }

    /** The signatures that count. */
    public List<Signature> counted() {
        return judged.entrySet().stream()
                .filter(entry -> entry.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .collect(Collectors.toList());
    }

    /** What keeps the release from being used: signatures that do not count, then what is missing. */
    public List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (!complete()) {
            judged.forEach((signature, against) ->
                    against.ifPresent(says -> faults.add(new Fault(place(signature.statement()), says))));
            missing().forEach(says -> faults.add(new Fault("release " + manifest.version(), says)));
        }
        return faults;
    }

    /** Why each signature that does not count does not. */
    public List<Fault> uncounted() {
        return judged.entrySet().stream()
                .filter(entry -> entry.getValue().isPresent())
                .map(entry -> new Fault(
                        place(entry.getKey().statement()), entry.getValue().orElseThrow()))
                .toList();
    }
}
