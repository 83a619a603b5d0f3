package org.tunica.physics;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What any release of this process found lately with the same constants of heat: releases that differ in rules alone search
 * once. Constants that were not asked for the longest time are forgotten.
 */
final class SharedHeat {
    private static final int MOST_CONSTANTS = 4;

    private static final Map<String, HeatMemory> BY_CONSTANTS = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, HeatMemory> eldest) {
            return size() > MOST_CONSTANTS;
        }
    };

    private SharedHeat() {}

    /** The memory of these constants. */
    static HeatMemory of(String heatDigest) {
        synchronized (BY_CONSTANTS) {
            return BY_CONSTANTS.computeIfAbsent(heatDigest, any -> new RecentHeat());
        }
    }
}
