package org.tunica.casefile;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Invented words and ranges, so that tests of reading do not depend on knowledge/. */
final class FewWords implements KnownWords {
    private static final Map<String, PlausibleRange> RANGES = Map.of(
            "patient.ageYears", new PlausibleRange(0, 120, "a"),
            "patient.weightKg", new PlausibleRange(20, 350, "kg"),
            "limbs.ankleBrachialIndex", new PlausibleRange(0, 2.5, "1"),
            "limbs.segments.wallThicknessMm", new PlausibleRange(0.05, 5, "mm"),
            "room.sclerosants.percent", new PlausibleRange(0.1, 5, "%"));

    private static final PlausibleRange ANY = new PlausibleRange(0, 1000, "mm");

    @Override
    public Set<String> techniqueIds() {
        return new TreeSet<>(Set.of("laser-1470-radial", "foam-polidocanol", "adhesive"));
    }

    @Override
    public Set<String> allergyIds() {
        return new TreeSet<>(Set.of("polidocanol", "cyanoacrylate"));
    }

    @Override
    public Set<String> conditionIds() {
        return new TreeSet<>(Set.of("migraine-with-aura", "active-cancer", "trunk-is-main-outflow"));
    }

    @Override
    public Optional<PlausibleRange> plausibleRange(String path) {
        return Optional.of(RANGES.getOrDefault(path, ANY));
    }
}
