package org.tunica.treatment;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Heat given over a length, as recorded. A linear energy never stands without power or pullback.
 *
 * @param lengthCm of the stretch; absent for the whole treated length
 * @param powerW power
 * @param pullbackSecondsPerCm time on each centimetre
 * @param pullbackMmPerS the same as a speed
 * @param leedJPerCm linear energy
 * @param totalEnergyJ energy over the length
 * @param heatingSeconds time the device was on
 * @param cycles on each position of a contact element
 * @param pulsesPerCm of steam
 * @param elementTemperatureC of a contact element
 */
public record DeliveredHeat(
        OptionalDouble lengthCm,
        OptionalDouble powerW,
        OptionalDouble pullbackSecondsPerCm,
        OptionalDouble pullbackMmPerS,
        OptionalDouble leedJPerCm,
        OptionalDouble totalEnergyJ,
        OptionalDouble heatingSeconds,
        OptionalInt cycles,
        OptionalDouble pulsesPerCm,
        OptionalDouble elementTemperatureC) {}
