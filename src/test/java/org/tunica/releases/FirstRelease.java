package org.tunica.releases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tunica.governance.ReleaseBuilder;
import org.tunica.governance.ReleaseFiles;
import org.tunica.governance.ReleaseIntent;
import org.tunica.governance.ReplayReport;
import org.tunica.governance.SemanticVersion;
import org.tunica.knowledge.Bundle;
import org.tunica.signing.Signature;
import org.tunica.signing.SigningKey;
import org.tunica.signing.SigningRole;
import org.tunica.store.Actor;
import org.tunica.store.Store;

/**
 * For tests elsewhere: the program's own rules with their scenarios as release 1.0.0, in force, and the keys of invented
 * people: anna writes, rosa reviews, clara is clinical lead, stefan safety officer. They must be users already.
 */
public final class FirstRelease {
    private static final Actor BY = new Actor("command-line");

    private final Store store;
    private final Clock clock;
    private final Map<String, SigningKey> hands = new HashMap<>();

    private FirstRelease(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** Puts it in force. */
    public static FirstRelease inForce(Store store, Clock clock) {
        FirstRelease first = new FirstRelease(store, clock);
        for (String name : List.of("anna", "rosa", "clara", "stefan")) {
            SigningKey key = SigningKey.fresh(name, "k1");
            first.hands.put(name, key);
            new KeyDesk(store).add(BY, name, "k1", key.publicKey());
        }
        first.approve("1.0.0");
        first.activate("1.0.0");
        return first;
    }

    /** Builds the same rules once more under another number, and has everybody sign it. */
    public void approve(String version) {
        ReleaseDesk desk = desk();
        desk.keep(BY, files(version));
        desk.submit(BY, version);
        SigningDesk signing = new SigningDesk(store, clock);
        signing.sign(signature(version, "rosa", SigningRole.REVIEWER));
        signing.sign(signature(version, "clara", SigningRole.CLINICAL_LEAD));
        signing.sign(signature(version, "stefan", SigningRole.SAFETY_OFFICER));
    }

    /** Puts an approved one in force. */
    public void activate(String version) {
        desk().activate(BY, version);
    }

    private ReleaseDesk desk() {
        return new ReleaseDesk(store, clock, bundle -> {});
    }

    private ReleaseFiles files(String version) {
        Bundle bundle = Bundle.shipped();
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        ReleaseIntent intent = new ReleaseIntent(
                SemanticVersion.of(version),
                "the rules that came with the program",
                List.of("anna"),
                List.of("0003"),
                Optional.empty(),
                Optional.empty(),
                today.plusYears(1));
        ReplayReport replay = new ReplayReport("{\"format\":\"tunica-replay/1\",\"against\":{\"digest\":\""
                + bundle.digest() + "\"},\"draft\":{\"digest\":\"" + bundle.digest() + "\"}}\n");
        return new ReleaseBuilder("9.9.9", today)
                .build(intent, bundle, new ReleaseBuilder.Beside(replay, features(), Optional.empty()));
    }

    private static SortedMap<String, String> features() {
        SortedMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> found = Files.walk(Path.of("features"))) {
            for (Path file :
                    found.filter(path -> path.toString().endsWith(".feature")).toList()) {
                texts.put(file.toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What somebody's own machine signs, of a release as it is kept. */
    public Signature signature(String version, String person, SigningRole role) {
        SigningKey hand = hands.get(person);
        return hand.sign(new SigningDesk(store, clock).statement(version, role, person, hand.keyId()));
    }

    /** The moment by the clock, to the second. */
    public java.time.Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    /** The key of a person. */
    public SigningKey hand(String person) {
        return hands.get(person);
    }
}
