package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Settings and quantities of an option. A linear energy never stands without power and pullback: all three are in
 * {@code ranges} or none is.
 *
 * @param tumescentMl tumescent bed or anaesthetic for this segment
 * @param lidocaineMgPerKg lidocaine in it
 * @param drug sclerosant chosen from the stock
 * @param drugPercent its strength
 * @param drugMl liquid for this segment
 * @param foamMl foam for this segment
 * @param lesions focused-ultrasound lesions in one row
 * @param note what the ranges do not say
 */
public record SettingsAdvice(
        OptionalDouble tumescentMl,
        OptionalDouble lidocaineMgPerKg,
        Optional<String> drug,
        OptionalDouble drugPercent,
        OptionalDouble drugMl,
        OptionalDouble foamMl,
        OptionalDouble lesions,
        List<SettingAdvice> ranges,
        Optional<String> note) {}
