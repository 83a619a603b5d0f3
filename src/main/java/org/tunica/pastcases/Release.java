package org.tunica.pastcases;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.knowledge.Knowledge;

/**
 * Makes past cases of waiting ones: those of which somebody has seen exactly the bytes that are kept, in a crowd of at least
 * k.
 */
public final class Release {
    private final int k;
    private final Crowd base = new Crowd();

    /**
     * A release into a base.
     *
     * @param released what is in the base already
     */
    public Release(Knowledge knowledge, EachCase released) {
        this.k = AnonymityLimits.of(knowledge).k();
        released.to(base::add);
    }

    /** One more came into the base. */
    public void came(PastCase released) {
        base.add(released);
    }

    /**
     * The past cases of waiting ones, all or none. Those released together count together, or a base could never begin.
     *
     * @throws org.tunica.casefile.FaultyInput when one would stand in too small a crowd, with what it waits for
     */
    public List<PastCase> of(List<WaitingCase> chosen) {
        Faults faults = new Faults();
        placed(chosen).stream()
                .filter(place -> place.missing() > 0)
                .forEach(place -> faults.add(place.id(), "is held back: " + place.says()));
        faults.throwIfAny("release");
        return chosen.stream().map(WaitingCase::released).toList();
    }

    /** Where each waiting case would stand if all that wait were released together. */
    public List<Place> places(List<WaitingCase> waiting) {
        return placed(waiting);
    }

    private List<Place> placed(List<WaitingCase> waiting) {
        Crowd together = base.copy();
        waiting.forEach(together::add);
        Map<List<String>, Integer> sizes = together.sizes(k);
        Map<Boolean, Set<String>> rare = Map.of(true, together.rare(true, k), false, together.rare(false, k));
        return waiting.stream()
                .map(one -> place(one, together, sizes, rare.get(one.invented())))
                .toList();
    }

    private Place place(WaitingCase waiting, Crowd together, Map<List<String>, Integer> sizes, Set<String> rare) {
        Profile profile = Profile.of(waiting);
        int alike = sizes.get(together.told(profile, k));
        List<String> told = profile.words();
        profile.ails().stream().filter(rare::contains).forEach(ail -> told.add(ail.replace('-', ' ')));
        return new Place(
                waiting.id(),
                alike,
                Math.max(0, k - alike),
                (waiting.invented() ? "invented, " : "") + String.join(", ", told));
    }

    /**
     * The crowd a waiting case would stand in.
     *
     * @param alike how many would look like it, itself among them
     * @param missing how many more must come before it can be released
     * @param what they have in common, in words
     */
    public record Place(String id, int alike, int missing, String what) {
        /** In one sentence. */
        public String says() {
            return missing == 0
                    ? alike + " look alike (" + what + ")"
                    : "it waits for " + missing + " more with " + what;
        }
    }
}
