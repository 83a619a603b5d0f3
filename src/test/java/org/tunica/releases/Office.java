package org.tunica.releases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.tunica.Tunica;
import org.tunica.governance.ReleaseBuilder;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.governance.SignOff;
import org.tunica.knowledge.Bundle;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.store.Actor;
import org.tunica.store.Role;
import org.tunica.store.Store;

/**
 * An invented clinic's governance: Alma writes rules, Rosa reviews, Clara is clinical lead, Stefan safety officer. Time stands
 * still until a test moves it.
 */
final class Office implements AutoCloseable {
    static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    static final Actor BY = new Actor("command-line");
    static final Program PROGRAM = new Program("9.9.9", Optional.empty());

    /** What the shipped rules say, and with a wider gap to the skin for heat. */
    static final Bundle RULES = Bundle.shipped();

    static final Bundle WIDER_GAP = withSkinGap("8");

    /** Read by nobody; where only the life of a release matters. */
    static final Bundle SMALL = Bundle.of(
            Map.of("rules/changes/0003-x.yaml", "number\n", "knowledge/a.yaml", "a: 1\n", "rules/a.rule", "x\n"));

    private static final Set<String> TRIED = ConcurrentHashMap.newKeySet();

    final MovedClock clock = new MovedClock(START);
    final Store store;
    final ReleaseRecords records;
    final ReleaseDesk desk;
    final SigningDesk signing;
    final KeyDesk keyDesk;
    final Engines engines;
    final Map<String, SigningKey> hands = new HashMap<>();

    Office(String place) {
        this.store = Store.open(place, clock);
        this.records = new ReleaseRecords(store);
        this.desk = new ReleaseDesk(store, clock, Office::tryOut);
        this.signing = new SigningDesk(store, clock);
        this.keyDesk = new KeyDesk(store);
        this.engines = new Engines(records, clock, PROGRAM);
    }

    /** As the program does, once for each bundle. */
    private static void tryOut(Bundle bundle) {
        if (!bundle.digest().equals(SMALL.digest()) && TRIED.add(bundle.digest())) {
            Tunica.of(bundle);
        }
    }

    /** An office with everybody in it. */
    static Office staffed(String place) {
        Office office = new Office(place);
        office.employ("alma", Role.RULE_AUTHOR);
        office.employ("rosa", Role.SPECIALIST);
        office.employ("clara", Role.CLINICAL_LEAD);
        office.employ("stefan", Role.SAFETY_OFFICER);
        return office;
    }

    void employ(String name, Role role) {
        keyDesk.addPerson(BY, name, Set.of(role));
        SigningKey key = SigningKey.fresh(name, "k1");
        hands.put(name, key);
        keyDesk.add(BY, name, "k1", key.publicKey());
    }

    static Bundle withSkinGap(String valueMm) {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        String path = "knowledge/limits/distances.yaml";
        texts.put(
                path,
                texts.get(path)
                        .replaceFirst("(?m)^(heat.skin-gap.min:\\n(?:  .*\\n)*?  value: )\\S+$", "$1" + valueMm));
        return Bundle.of(texts);
    }

    ReleaseFiles files(String version, Bundle bundle) {
        return files(version, bundle, Optional.empty());
    }

    ReleaseFiles files(String version, Bundle bundle, Optional<LocalDate> effectiveTo) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        ReleaseIntent intent = new ReleaseIntent(
                SemanticVersion.of(version),
                "gaps to the skin",
                List.of("alma"),
                List.of("0003"),
                Optional.empty(),
                effectiveTo,
                today.plusYears(1));
        String before = versionInForce()
                .map(inForce -> records.release(inForce).files().manifest().rules())
                .orElse(RULES.digest());
        ReplayReport replay = new ReplayReport("{\"format\":\"tunica-replay/1\",\"against\":{\"digest\":\"" + before
                + "\"},\"draft\":{\"digest\":\"" + bundle.digest() + "\"},\"of\":\"" + version + "\"}\n");
        return new ReleaseBuilder(PROGRAM.version(), today)
                .build(intent, bundle, new ReleaseBuilder.Beside(replay, new TreeMap<>(), Optional.empty()));
    }

    void inReview(String version, Bundle bundle) {
        desk.keep(BY, files(version, bundle));
        desk.submit(BY, version);
    }

    SignOff sign(String version, String person, SigningRole role) {
        return signing.sign(signature(version, person, role));
    }

    Signature signature(String version, String person, SigningRole role) {
        SigningKey hand = hands.get(person);
        return hand.sign(signing.statement(version, role, person, hand.keyId()));
    }

    void signByAll(String version) {
        sign(version, "rosa", SigningRole.REVIEWER);
        sign(version, "clara", SigningRole.CLINICAL_LEAD);
        sign(version, "stefan", SigningRole.SAFETY_OFFICER);
    }

    void approved(String version, Bundle bundle) {
        inReview(version, bundle);
        signByAll(version);
    }

    /** In force, and an hour later. */
    void inForce(String version, Bundle bundle) {
        approved(version, bundle);
        desk.activate(BY, version);
        hours(1);
    }

    void hours(int hours) {
        clock.move(Duration.ofHours(hours));
    }

    Optional<String> versionInForce() {
        return records.timeline().inForceAt(clock.instant());
    }

    static byte[] demo(String name) {
        try {
            return Files.readAllBytes(Path.of("knowledge/demo", name + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The advice of an engine for a demo case, as it is given. */
    static String advice(Engines.Engine engine, String demo) {
        return engine.tunica().toJson(engine.tunica().advise(engine.tunica().readCase(demo, demo(demo))));
    }

    @Override
    public void close() {
        store.close();
    }
}
