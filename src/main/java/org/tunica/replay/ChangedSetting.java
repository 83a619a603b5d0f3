package org.tunica.replay;

/**
 * One setting or quantity before and after, in words.
 *
 * @param setting its name
 * @param before empty when there was none
 * @param after empty when there is none now
 */
public record ChangedSetting(String setting, String before, String after) {
    /** For example {@code linear energy: was 60 to 80 J/cm, is 70 to 80 J/cm}. */
    public String sentence() {
        if (before.isEmpty()) {
            return setting + ": new, " + after;
        }
        return setting + ": " + (after.isEmpty() ? "no longer " + before : "was " + before + ", is " + after);
    }
}
