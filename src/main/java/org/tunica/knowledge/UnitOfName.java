package org.tunica.knowledge;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The unit a number's name promises, in UCUM. The program computes in these; another unit beside the name would lie. */
final class UnitOfName {
    /** Endings of names, a longer one before the shorter one it ends with. */
    private static final Map<String, String> BY_ENDING = new LinkedHashMap<>();

    static {
        BY_ENDING.put("SecondsPerCm", "s/cm");
        BY_ENDING.put("JPerCm", "J/cm");
        BY_ENDING.put("MlPerCm", "mL/cm");
        BY_ENDING.put("PerCm", "/cm");
        BY_ENDING.put("MmPerS", "mm/s");
        BY_ENDING.put("MmHg", "mm[Hg]");
        BY_ENDING.put("Mm", "mm");
        BY_ENDING.put("Cm", "cm");
        BY_ENDING.put("Ml", "mL");
        BY_ENDING.put("Kg", "kg");
        BY_ENDING.put("Years", "a");
        BY_ENDING.put("Seconds", "s");
        BY_ENDING.put("Percent", "%");
        BY_ENDING.put("powerW", "W");
        BY_ENDING.put("PulseJ", "J");
        BY_ENDING.put("TemperatureC", "Cel");
    }

    private UnitOfName() {}

    /** The unit, when the name ends with one; a dose per kilogram or an index has its unit in the glossary alone. */
    static Optional<String> of(String name) {
        return BY_ENDING.entrySet().stream()
                .filter(ending -> name.endsWith(ending.getKey()) && !name.endsWith("PerKg"))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
