package org.tunica.physics;

import org.tunica.heat.MeasurementSpread;

/**
 * Everything a search for a heat setting rests on beside the constants of the models: two that are equal have the same
 * answer, of whatever case they are.
 *
 * @param device id
 * @param wallMm wall wrapped on the device
 * @param blood whether the vein holds blood
 * @param chilled whether the fluid around it is chilled
 * @param nerveGapMm gap to the nerve
 * @param skinGapMm gap to the skin
 * @param spread how far the measurements may be off
 */
public record HeatQuestion(
        String device,
        double wallMm,
        boolean blood,
        boolean chilled,
        double nerveGapMm,
        double skinGapMm,
        MeasurementSpread spread) {}
