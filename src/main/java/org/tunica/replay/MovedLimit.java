package org.tunica.replay;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A number of knowledge/ that is not the same in two releases.
 *
 * @param id of the number
 * @param beforeValue absent when it was not there
 * @param afterValue absent when it is gone
 * @param unit UCUM code, of the release after where it is there
 */
public record MovedLimit(String id, OptionalDouble beforeValue, OptionalDouble afterValue, String unit) {
    /** For example {@code heat.skin-gap.min: was 5 mm, is 4 mm}. */
    public String sentence() {
        return id + ": " + ChangedSetting.words(words(beforeValue), words(afterValue));
    }

    private Optional<String> words(OptionalDouble value) {
        return value.isPresent() ? Optional.of(Amounts.of(value.getAsDouble(), unit)) : Optional.empty();
    }
}
