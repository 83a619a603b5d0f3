package org.tunica.heat;

import java.util.Optional;

/** What a device does to a slice over time. */
interface HeatSupply {
    /** Time from the start until the device has left, s. */
    double durationS();

    /** Equal time steps over that time at step factor 1. */
    int steps();

    /** Sets the sources of the slice for a step whose middle lies at the given time; the slice was at rest. */
    void heat(double middleS, Bioheat slice);

    /** The supply to run once more when the vapour of this run condenses again nearby; empty when it does not. */
    default Optional<HeatSupply> withSteam(double steamJPerM) {
        return Optional.empty();
    }
}
