package org.tunica.physics;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Remembers what was found lately, while the program runs. */
final class RecentHeat implements HeatMemory {
    /** About 2 KB each. */
    private static final int MOST_REMEMBERED = 10_000;

    private final Map<HeatQuestion, HeatOutlook> remembered = Collections.synchronizedMap(new Recent());

    @Override
    public Optional<HeatOutlook> recall(HeatQuestion question) {
        return Optional.ofNullable(remembered.get(question));
    }

    @Override
    public void keep(HeatQuestion question, HeatOutlook found) {
        remembered.put(question, found);
    }

    /** Forgets what was not asked for the longest time. */
    private static final class Recent extends LinkedHashMap<HeatQuestion, HeatOutlook> {
        Recent() {
            super(64, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<HeatQuestion, HeatOutlook> eldest) {
            return size() > MOST_REMEMBERED;
        }
    }
}
