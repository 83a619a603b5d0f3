package org.tunica.workroom;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Standing;

/**
 * A number of {@code knowledge/} as somebody typed it into a form: the lines of its entry that say so are written anew, all
 * others stay as they are.
 *
 * @param id of the number
 * @param value in the unit it has
 * @param source id of a source
 * @param standing a word of {@link Standing}
 * @param note empty to leave the note as it is
 */
public record NumberEdit(String id, String value, String source, String standing, String note) {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?(e[+-]?\\d{1,2})?");
    private static final Pattern SOURCE = Pattern.compile("S-\\d{4}");

    /** Where the entry of a number stands. */
    public record Place(String path, String text, int from, int to) {
        /** The lines of the entry. */
        public String entry() {
            return text.substring(from, to);
        }
    }

    /** The entry of a number among the files of a draft; empty when it stands in none as an entry of its own. */
    public static Optional<Place> find(Draft draft, String id) {
        return find(draft.copy().after(), id);
    }

    static Optional<Place> find(Bundle bundle, String id) {
        String opening = id + ":\n";
        for (Map.Entry<String, String> file :
                bundle.under("knowledge/", ".yaml").entrySet()) {
            String text = file.getValue();
            int from = text.startsWith(opening) ? 0 : text.indexOf("\n" + opening) + 1;
            if (from > 0 || text.startsWith(opening)) {
                Place place = new Place(file.getKey(), text, from, end(text, from + opening.length()));
                return Optional.of(place).filter(found -> found.entry().contains("\n  value: "));
            }
        }
        return Optional.empty();
    }

    /** An entry ends where a line begins at the margin. */
    private static int end(String text, int from) {
        int at = from;
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\n')) {
            int next = text.indexOf('\n', at);
            at = next < 0 ? text.length() : next + 1;
        }
        return at;
    }

    /**
     * The whole file with the number as typed, brought by a change on a day.
     *
     * @throws FaultyInput with every field that cannot be taken
     */
    public String in(Place place, String change, String day) {
        Faults faults = new Faults();
        if (!NUMBER.matcher(value.strip()).matches()) {
            faults.add("value", "must be a number such as 5 or 0.25, is \"" + value + "\"");
        }
        if (!SOURCE.matcher(source.strip()).matches()) {
            faults.add("source", "must be the id of a source such as S-0010, is \"" + source + "\"");
        }
        if (Arrays.stream(Standing.values()).map(Word::word).noneMatch(standing::equals)) {
            faults.add("standing", "must be one of the standings, is \"" + standing + "\"");
        }
        if (!note.matches("[ -~\\r\\n]*")) {
            faults.add("note", "must be of printable ASCII; everything else is refused in these files");
        }
        faults.throwIfAny("number " + id);
        String entry = place.entry();
        entry = line(entry, "value", value.strip());
        entry = line(entry, "source", source.strip());
        entry = line(entry, "status", standing);
        entry = line(entry, "since", day);
        entry = line(entry, "change", "\"" + change + "\"");
        return place.text().substring(0, place.from())
                + noted(entry)
                + place.text().substring(place.to());
    }

    private static String line(String entry, String field, String says) {
        return entry.replaceFirst("(?m)^  " + field + ": .*$", Matcher.quoteReplacement("  " + field + ": " + says));
    }

    private String noted(String entry) {
        if (note.isBlank()) {
            return entry;
        }
        String without = entry.replaceFirst("(?m)^  note:.*\\n(?:    .*\\n)*", "");
        StringBuilder written = new StringBuilder(without.stripTrailing()).append("\n  note: >-\n");
        List.of(note.strip().split("\\R"))
                .forEach(line -> written.append("    ").append(line.strip()).append('\n'));
        return written + without.substring(without.stripTrailing().length()).replaceFirst("^\\n", "");
    }

    /** Every standing, as a form offers it. */
    public static List<String> standings() {
        return Arrays.stream(Standing.values())
                .map(standing -> standing.word().toLowerCase(Locale.ROOT))
                .toList();
    }
}
