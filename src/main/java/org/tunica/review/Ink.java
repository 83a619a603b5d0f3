package org.tunica.review;

import java.util.Collection;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A stretch of Markdown inside a line. Whatever a text holds, it stays text: every character that could mean something
 * is escaped.
 *
 * @param line as it stands in a line
 * @param cell as it stands in a cell of a table
 */
record Ink(String line, String cell) {
    private static final Pattern MEANING = Pattern.compile("[\\\\`*_{}\\[\\]<>#|~&!$^=+]");
    private static final Pattern LIST = Pattern.compile("^(\\s*\\d+)([.)])(?=\\s|$)");
    private static final Pattern DASH = Pattern.compile("^(\\s*)-");
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}]+");
    private static final Pattern BACKTICKS = Pattern.compile("`+");
    private static final Pattern NOT_IN_ANCHOR = Pattern.compile("[^a-z0-9 _-]");

    /** A plain text. */
    static Ink text(String text) {
        String escaped =
                MEANING.matcher(printable(text)).replaceAll(found -> Matcher.quoteReplacement("\\" + found.group()));
        String safe = LIST.matcher(escaped).replaceFirst("$1\\\\$2");
        return same(DASH.matcher(safe).replaceFirst("$1\\\\-"));
    }

    /** A text that stands out. */
    static Ink strong(String text) {
        return text.isBlank() ? text(text) : same("**" + text(text).line + "**");
    }

    /** Words exactly as a file holds them. */
    static Ink code(String text) {
        String printable = printable(text);
        int longest = BACKTICKS
                .matcher(printable)
                .results()
                .mapToInt(run -> run.group().length())
                .max()
                .orElse(0);
        String fence = "`".repeat(longest + 1);
        String pad = longest > 0 ? " " : "";
        String code = fence + pad + printable + pad + fence;
        return new Ink(code, code.replace("|", "\\|"));
    }

    /** A link to a heading of the same page. */
    static Ink link(String text, String heading) {
        return same("[" + text(text).line + "](#" + anchor(heading) + ")");
    }

    static Ink of(Ink... parts) {
        StringBuilder line = new StringBuilder();
        StringBuilder cell = new StringBuilder();
        for (Ink part : parts) {
            line.append(part.line);
            cell.append(part.cell);
        }
        return new Ink(line.toString(), cell.toString());
    }

    static Ink join(String between, Collection<Ink> parts) {
        String escaped = text(between).line;
        return new Ink(
                parts.stream().map(Ink::line).collect(Collectors.joining(escaped)),
                parts.stream().map(Ink::cell).collect(Collectors.joining(escaped)));
    }

    /** How a heading is linked to. */
    static String anchor(String heading) {
        String small = heading.toLowerCase(Locale.ROOT).strip();
        return NOT_IN_ANCHOR.matcher(small).replaceAll("").replace(' ', '-');
    }

    private static Ink same(String markdown) {
        return new Ink(markdown, markdown);
    }

    private static String printable(String text) {
        return UNPRINTABLE.matcher(text).replaceAll(" ");
    }
}
