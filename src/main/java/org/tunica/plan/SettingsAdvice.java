package org.tunica.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Settings and quantities of an option. A linear energy never stands without power and pullback: the
 * proposed three are there together or not at all, and so are the three in {@code ranges}.
 *
 * @param powerW of the setting the heat model proposes
 * @param pullbackSecondsPerCm with it
 * @param leedJPerCm linear energy of the two
 * @param totalEnergyJ over the length of the segment
 * @param cycles on each stretch of a contact element, proposed
 * @param pulsesPerCm of steam, proposed
 * @param againstCustom where the proposed setting lies outside the customary range, in words
 * @param tumescentMl tumescent bed or anaesthetic for this segment
 * @param lidocaineMgPerKg lidocaine in it
 * @param drug sclerosant chosen from the stock
 * @param drugPercent its strength
 * @param drugMl liquid for this segment
 * @param sclerosantMgPerKg drug for this segment by body weight
 * @param foamMl foam for this segment
 * @param lesions focused-ultrasound lesions in one row
 * @param note what the ranges do not say
 */
public record SettingsAdvice(
        OptionalDouble powerW,
        OptionalDouble pullbackSecondsPerCm,
        OptionalDouble leedJPerCm,
        OptionalDouble totalEnergyJ,
        OptionalDouble cycles,
        OptionalDouble pulsesPerCm,
        List<String> againstCustom,
        OptionalDouble tumescentMl,
        OptionalDouble lidocaineMgPerKg,
        Optional<String> drug,
        OptionalDouble drugPercent,
        OptionalDouble drugMl,
        OptionalDouble sclerosantMgPerKg,
        OptionalDouble foamMl,
        OptionalDouble lesions,
        List<SettingAdvice> ranges,
        Optional<String> note) {}
