package org.tunica.governance;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tunica.knowledge.Bundle;
import org.tunica.signing.KeyRing;
import org.tunica.signing.KnownKey;
import org.tunica.signing.Purpose;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.signing.Withdrawal;

/** A small release and the invented people around it: Alma wrote it, Rosa reviews, Clara leads, Stefan minds safety. */
final class Draft {
    static final Instant AT = Instant.parse("2026-03-01T08:00:00Z");
    static final LocalDate TODAY = LocalDate.of(2026, 3, 1);

    final Map<String, SigningKey> hands = new LinkedHashMap<>();
    final List<KnownKey> known = new ArrayList<>();
    final ReleaseFiles files;

    Draft() {
        this.files = built("1.0.0", List.of("alma"));
        person("alma", Set.of());
        person("rosa", Set.of(SigningRole.REVIEWER));
        person("clara", Set.of(SigningRole.CLINICAL_LEAD));
        person("stefan", Set.of(SigningRole.SAFETY_OFFICER));
    }

    void person(String name, Set<SigningRole> roles) {
        SigningKey key = SigningKey.fresh(name, "k1");
        hands.put(name, key);
        known.add(new KnownKey(name, "k1", key.publicKey(), roles, Optional.empty()));
    }

    void withdraw(String person, Withdrawal.Reason reason, Instant at) {
        known.replaceAll(key -> key.person().equals(person)
                ? new KnownKey(
                        person, key.keyId(), key.publicKey(), key.roles(), Optional.of(new Withdrawal(at, reason)))
                : key);
    }

    KeyRing ring() {
        return new KeyRing(known);
    }

    static ReleaseFiles built(String version, List<String> authors) {
        Bundle bundle = bundle();
        ReleaseIntent intent = new ReleaseIntent(
                SemanticVersion.of(version),
                "a wider gap to the skin",
                authors,
                List.of("0001"),
                Optional.empty(),
                Optional.of(TODAY.plusYears(2)),
                TODAY.plusYears(1));
        return new ReleaseBuilder("9.9.9", TODAY)
                .build(
                        intent,
                        bundle,
                        new ReleaseBuilder.Beside(
                                replay(bundle),
                                new TreeMap<>(Map.of("pages/rule-book.md", "# Rules\n")),
                                Optional.empty()));
    }

    static Bundle bundle() {
        return Bundle.of(Map.of(
                "rules/2-exclusions/skin.rule", "rule\n",
                "rules/changes/0001-first.yaml", "number: \"0001\"\n",
                "knowledge/limits/heat.yaml", "gap: 10 mm é\n"));
    }

    static ReplayReport replay(Bundle bundle) {
        return new ReplayReport(
                "{\"format\":\"tunica-replay/1\",\"draft\":{\"digest\":\"" + bundle.digest() + "\"}}\n");
    }

    Signature acknowledged() {
        return sign("rosa", SigningRole.REVIEWER);
    }

    Signature sign(String person, SigningRole role) {
        Manifest manifest = files.manifest();
        boolean reviews = role == SigningRole.REVIEWER;
        return hands.get(person)
                .sign(new Statement(
                        reviews ? Purpose.ACKNOWLEDGE_REPLAY : Purpose.SIGN_OFF,
                        manifest.version(),
                        reviews ? manifest.replay() : manifest.digest(),
                        person,
                        role,
                        "k1",
                        AT));
    }

    Signatures signed() {
        return new Signatures(List.of(
                acknowledged(), sign("clara", SigningRole.CLINICAL_LEAD), sign("stefan", SigningRole.SAFETY_OFFICER)));
    }
}
