package org.tunica.replay;

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
        return new ChangedSetting(id, words(beforeValue), words(afterValue)).sentence();
    }

    private String words(OptionalDouble value) {
        return value.isPresent() ? Amounts.of(value.getAsDouble(), unit) : "";
    }
}
