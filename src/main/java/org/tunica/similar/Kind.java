package org.tunica.similar;

/**
 * Segments of which the same is known: the same fields, and settings of the same way. Written as two numbers, such as
 * {@code 8191-2}.
 *
 * @param mask a bit for each field that is known
 * @param way of the settings, or {@link Profile#UNKNOWN}
 */
record Kind(int mask, int way) {
    private static final String NO_WAY = "x";

    static Kind of(Profile profile) {
        return new Kind(Signature.mask(profile), profile.at(Field.SETTINGS.column()));
    }

    static Kind of(String word) {
        int dash = word.indexOf('-');
        String way = word.substring(dash + 1);
        return new Kind(
                Integer.parseInt(word.substring(0, dash)),
                way.equals(NO_WAY) ? Profile.UNKNOWN : Integer.parseInt(way));
    }

    String word() {
        return mask + "-" + (way == Profile.UNKNOWN ? NO_WAY : way);
    }

    /** Whether a field that is known of a question is known here, too; settings of two ways have nothing in common. */
    boolean comparable(Field field, Profile question) {
        return (mask & 1 << field.ordinal()) != 0
                && (field != Field.SETTINGS || way == question.at(Field.SETTINGS.column()));
    }
}
