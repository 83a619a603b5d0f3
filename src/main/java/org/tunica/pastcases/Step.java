package org.tunica.pastcases;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What kinds of measurements are rounded to; each is a quantity of knowledge/. */
enum Step {
    LENGTH,
    LUMEN,
    WALL,
    DEPTH,
    REFLUX,
    INDEX,
    PRESSURE,
    FLUID,
    VOLUME,
    DOSE,
    STRENGTH,
    POWER,
    PULLBACK,
    SPEED,
    LINEAR_ENERGY,
    ENERGY,
    TIME,
    TEMPERATURE,
    PULSES;

    static final List<String> IDS = Arrays.stream(values()).map(Step::id).toList();

    String id() {
        return "anonymity.step." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
