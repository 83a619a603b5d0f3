package org.tunica.similar;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Word;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;

/** Settings that belong together. A treatment has those of one way; they are known when all its numbers are. */
enum Way implements Word {
    POWER_AND_PULLBACK("powerW", "pullbackSecondsPerCm"),
    HEATING_CYCLES("elementTemperatureC", "cycles"),
    STEAM_PULSES("pulsesPerCm"),
    SCLEROSANT_STRENGTH("sclerosantPercent"),
    ADHESIVE_VOLUME("adhesiveMlPerCm");

    private static final double MM_PER_CM = 10;

    private final List<String> numbers;

    Way(String... numbers) {
        this.numbers = List.of(numbers);
    }

    /** The names of its numbers. */
    List<String> numbers() {
        return numbers;
    }

    /** Its numbers in a record of a delivery; nothing when one of them is not recorded. */
    Optional<double[]> of(DeliveredSegment delivered) {
        OptionalDouble[] found = numbers.stream()
                .map(number -> number(number, delivered))
                .filter(OptionalDouble::isPresent)
                .toArray(OptionalDouble[]::new);
        return found.length < numbers.size()
                ? Optional.empty()
                : Optional.of(Arrays.stream(found)
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .toArray());
    }

    private static OptionalDouble number(String number, DeliveredSegment delivered) {
        Optional<DeliveredHeat> heat = mainSetting(delivered);
        return switch (number) {
            case "powerW" -> heat.map(DeliveredHeat::powerW).orElse(OptionalDouble.empty());
            case "pullbackSecondsPerCm" -> heat.map(Way::pullback).orElse(OptionalDouble.empty());
            case "elementTemperatureC" ->
                heat.map(DeliveredHeat::elementTemperatureC).orElse(OptionalDouble.empty());
            case "cycles" -> heat.map(DeliveredHeat::cycles).map(Way::whole).orElse(OptionalDouble.empty());
            case "pulsesPerCm" -> heat.map(DeliveredHeat::pulsesPerCm).orElse(OptionalDouble.empty());
            case "sclerosantPercent" ->
                delivered.sclerosant().map(DeliveredSegment.Sclerosant::percent).orElse(OptionalDouble.empty());
            case "adhesiveMlPerCm" ->
                over(
                        delivered
                                .adhesive()
                                .map(DeliveredSegment.Adhesive::volumeMl)
                                .orElse(OptionalDouble.empty()),
                        delivered.treatedLengthCm());
            default -> throw new IllegalArgumentException("no setting " + number);
        };
    }

    /** The setting that counts: that of the longest stretch where there are several; nothing when a length is missing. */
    static Optional<DeliveredHeat> mainSetting(DeliveredSegment delivered) {
        if (delivered.stretches().isEmpty()) {
            return delivered.heat();
        }
        List<DeliveredHeat> stretches = delivered.stretches().get();
        boolean told = stretches.size() == 1
                || stretches.stream().allMatch(stretch -> stretch.lengthCm().isPresent());
        return told
                ? stretches.stream()
                        .max(Comparator.comparingDouble(
                                stretch -> stretch.lengthCm().orElse(0)))
                : Optional.empty();
    }

    /** Time on each centimetre, as recorded or as power and linear energy give it. */
    static OptionalDouble pullback(DeliveredHeat heat) {
        if (heat.pullbackSecondsPerCm().isPresent()) {
            return heat.pullbackSecondsPerCm();
        }
        return heat.pullbackMmPerS().isPresent()
                ? over(OptionalDouble.of(MM_PER_CM), heat.pullbackMmPerS())
                : over(heat.leedJPerCm(), heat.powerW());
    }

    private static OptionalDouble whole(OptionalInt number) {
        return number.isPresent() ? OptionalDouble.of(number.getAsInt()) : OptionalDouble.empty();
    }

    private static OptionalDouble over(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent() && b.getAsDouble() > 0
                ? OptionalDouble.of(a.getAsDouble() / b.getAsDouble())
                : OptionalDouble.empty();
    }
}
