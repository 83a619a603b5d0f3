package org.tunica.physics;

import java.util.Optional;

/**
 * Keeps what searches for heat settings found, so that none is made twice. One memory serves one set of constants, see
 * {@link Physics#heatDigest()}. Used by several threads at once.
 */
public interface HeatMemory {
    /** What was found for a question before. */
    Optional<HeatOutlook> recall(HeatQuestion question);

    /** Keeps what was found. */
    void keep(HeatQuestion question, HeatOutlook found);

    /** A memory that lasts while the program runs and forgets what was not asked for the longest time. */
    static HeatMemory recent() {
        return new RecentHeat();
    }
}
