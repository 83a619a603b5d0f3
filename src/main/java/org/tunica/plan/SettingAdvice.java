package org.tunica.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.knowledge.Standing;

/**
 * One setting with its range or value.
 *
 * @param setting id, for example {@code powerW}
 * @param name in words
 * @param value the one value, when a rule sets it
 * @param unit UCUM code
 * @param rule the rule that set it; absent for the customary range of the technique
 */
public record SettingAdvice(
        String setting,
        String name,
        OptionalDouble value,
        OptionalDouble low,
        OptionalDouble typical,
        OptionalDouble high,
        String unit,
        String source,
        Standing standing,
        Optional<String> rule) {

    /** The smallest value meant, if one is given. */
    OptionalDouble least() {
        return firstOf(value, low, typical);
    }

    /** The largest value meant, if one is given. */
    OptionalDouble most() {
        return firstOf(value, high, typical);
    }

    /** The usual value, if one is given. */
    OptionalDouble usual() {
        return firstOf(value, typical);
    }

    private static OptionalDouble firstOf(OptionalDouble... values) {
        return Arrays.stream(values)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }
}
