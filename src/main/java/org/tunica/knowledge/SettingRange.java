package org.tunica.knowledge;

import java.util.OptionalDouble;

/**
 * The published or customary range of one setting of a technique.
 *
 * @param setting id under {@code settings} of the glossary, for example {@code powerW}
 * @param unit UCUM code of the setting
 */
public record SettingRange(
        String setting,
        OptionalDouble low,
        OptionalDouble typical,
        OptionalDouble high,
        String unit,
        Provenance provenance) {}
