package org.tunica.paper;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text with every sign that hides, or turns the writing around it, shown as its code. */
public final class Printable {
    /** Signs XML forbids and those nobody sees. The two joiners stay, for several scripts are not written without them. */
    private static final Pattern NOT_PRINTING =
            Pattern.compile("[\\p{Cc}\\p{Cs}\\p{Zl}\\p{Zp}\\x{FFFE}\\x{FFFF}[\\p{Cf}&&[^\\x{200C}\\x{200D}\\x{AD}]]]");

    private Printable() {}

    /** The text as it may stand on a page or a screen. */
    public static String of(String text) {
        return NOT_PRINTING
                .matcher(text)
                .replaceAll(found -> Matcher.quoteReplacement(
                        String.format(Locale.ROOT, "\\u%04x", found.group().codePointAt(0))));
    }
}
