package org.tunica.replay;

import java.util.Optional;

/**
 * One setting or quantity before and after, in words.
 *
 * @param setting its name
 * @param before absent when there was none
 * @param after absent when there is none now
 */
public record ChangedSetting(String setting, Optional<String> before, Optional<String> after) {
    /** For example {@code foam: was 4 mL, is 5 mL}. */
    public String sentence() {
        return setting + ": " + words(before, after);
    }

    /** What became of something, in words. */
    static String words(Optional<String> before, Optional<String> after) {
        if (before.isEmpty()) {
            return "new, " + after.orElse("");
        }
        return after.map(is -> "was " + before.get() + ", is " + is).orElse("no longer " + before.get());
    }
}
