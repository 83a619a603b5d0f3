package org.tunica.similar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Entries of an index drawn at random: invented, of nobody. */
final class Entries {
    static final List<String> SITES = List.of("site-a", "site-b", "site-c");
    static final List<String> NOTES = List.of(
            "trunk closed over 36 cm", "no pain", "bruise, nerve pain at the ankle", "clot at the junction, closed");

    private Entries() {}

    static List<Entry> draw(int count, long seed, double missing) {
        return draw(count, seed, missing, 0);
    }

    /** @param from the first number of their places in the case base */
    static List<Entry> draw(int count, long seed, double missing, int from) {
        Profiles profiles = new Profiles(seed, missing);
        Random random = new Random(seed);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Profile profile = profiles.next();
            int technique = profile.at(Field.TECHNIQUE.column());
            entries.add(new Entry(
                    String.format("p-%016x%08x", random.nextLong(), random.nextInt()),
                    from + i,
                    random.nextInt(4),
                    profile,
                    Profiles.VOCABULARY.of(Field.TECHNIQUE).get(technique == Profile.UNKNOWN ? 0 : technique),
                    random.nextInt(10) == 0 ? Optional.empty() : Optional.of(random.nextInt(5) != 0),
                    random.nextBoolean(),
                    SITES.get(random.nextInt(SITES.size())),
                    List.of(NOTES.get(random.nextInt(NOTES.size())))));
        }
        return entries;
    }
}
