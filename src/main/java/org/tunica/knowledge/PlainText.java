package org.tunica.knowledge;

import java.util.Locale;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;

/**
 * Holds one file to characters that look like what they are: printable ASCII, and the accented Latin letters a citation
 * may need. What cannot be seen, turns the writing direction or looks like another letter could show a reviewer one
 * thing and the program another.
 */
final class PlainText {
    private static final Pattern STRANGE = Pattern.compile("[^ -~\\x{C0}-\\x{D6}\\x{D8}-\\x{F6}\\x{F8}-\\x{17E}]");
    private static final Pattern STRANGE_IN_A_NAME = Pattern.compile("[^ -~]");

    private final String file;
    private final String text;
    private final Faults faults;

    PlainText(String file, String text, Faults faults) {
        this.file = file;
        this.text = text;
        this.faults = faults;
    }

    /** Notes every line with a strange character, comments included. */
    void lines() {
        if (text.contains("\r\n")) {
            faults.add(file + ":1", "its lines end with carriage return and line feed; save it with line feeds alone");
        }
        if (text.chars().allMatch(c -> c == '\n' || isPlain(c))) {
            return;
        }
        String[] lines = text.replace("\r\n", "\n").split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            Matcher strange = STRANGE.matcher(lines[i]);
            if (strange.find()) {
                fault(file + ":" + (i + 1), "column", strange);
            }
        }
    }

    /** Notes a strange character that an escape or a line break put into a value: no line shows it. */
    void value(Supplier<String> place, String value) {
        if (value.chars().allMatch(PlainText::isPlain)) {
            return;
        }
        Matcher strange = STRANGE.matcher(value);
        if (strange.find() && (strange.group().equals("\n") || !text.contains(strange.group()))) {
            fault(place.get(), "in a value, character", strange);
        }
    }

    /** Notes any character of a name but printable ASCII. */
    void name(Supplier<String> place, String name) {
        Matcher strange = STRANGE_IN_A_NAME.matcher(name);
        if (strange.find()) {
            fault(place.get(), "in a name, character", strange);
        }
    }

    /** Told without a search: nearly every character read is one of these, and looking for others took a tenth of a start. */
    private static boolean isPlain(int character) {
        return character >= ' ' && character <= '~';
    }

    private void fault(String place, String where, Matcher strange) {
        faults.add(
                place,
                String.format(
                        Locale.ROOT,
                        "%s %d is U+%04X; only printable ASCII and, in values, accented Latin letters are read",
                        where,
                        strange.start() + 1,
                        strange.group().codePointAt(0)));
    }
}
