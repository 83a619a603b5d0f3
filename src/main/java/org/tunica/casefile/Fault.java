package org.tunica.casefile;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One thing wrong with an input. Characters of the input that do not print, or that turn the writing direction, are
 * shown as their code: a faulty file must not be able to write over the message about it.
 *
 * @param place where: a JSON path such as {@code $.limbs[0].segments[1].vein}, or file and key
 * @param says what is wrong, in one sentence, with the nearest known word where there is one
 */
public record Fault(String place, String says) implements Comparable<Fault> {
    /** A longer text of a fault is cut: an input must not fill the page that tells about it. */
    private static final int LONGEST = 1_000;

    private static final Pattern NOT_PRINTING = Pattern.compile("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]");

    public Fault {
        place = printable(cut(place));
        says = printable(cut(says));
    }

    @Override
    public int compareTo(Fault other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : says.compareTo(other.says);
    }

    @Override
    public String toString() {
        return place + ": " + says;
    }

    private static String cut(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
    }

    private static String printable(String text) {
        return NOT_PRINTING
                .matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        String.format(Locale.ROOT, "\\u%04x", found.group().codePointAt(0))));
    }
}
