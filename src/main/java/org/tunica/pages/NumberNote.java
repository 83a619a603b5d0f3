package org.tunica.pages;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.UcumWords;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Standing;
import org.tunica.wording.SettingWords;

/**
 * Help beside a number: what it is, where it comes from, how it stands.
 *
 * @param name of the number, or its id in knowledge/
 * @param value with its unit; empty where the number itself stands beside
 * @param says what it is
 * @param from its source, or how it is computed
 * @param standing how well it is supported, in words
 */
public record NumberNote(String name, String value, String says, String from, String standing) {
    private static final String COMPUTED = "computed by this program; an own definition, not a measurement";

    /** The help to a number of knowledge/. */
    static NumberNote of(Quantity number, Knowledge knowledge) {
        String range = number.low().isPresent() && number.high().isPresent()
                ? " (range " + SettingWords.plain(number.low().getAsDouble()) + " to "
                        + SettingWords.plain(number.high().getAsDouble()) + ")"
                : "";
        return new NumberNote(
                number.id(),
                SettingWords.plain(number.value()) + UcumWords.behind(number.unit()) + range,
                number.says()
                        + number.provenance().note().map(note -> "; " + note).orElse(""),
                source(number.provenance().source(), knowledge),
                words(number.provenance().standing()));
    }

    /** The same for several, by id. */
    public static List<NumberNote> of(Collection<String> ids, Knowledge knowledge) {
        return ids.stream().map(id -> of(knowledge.quantity(id), knowledge)).toList();
    }

    /** The help to a number that is computed. */
    static NumberNote computed(String name, String says, String from) {
        return new NumberNote(name, "", says, from, COMPUTED);
    }

    /** A source by id and by what it is. */
    static String source(String id, Knowledge knowledge) {
        return Optional.ofNullable(knowledge.sources().get(id))
                .map(source ->
                        id + ", " + source.cites() + " (read: " + source.read().word() + ")")
                .orElse(id);
    }

    /** How well a number is supported, for a reader who does not know the words of the files. */
    static String words(Standing standing) {
        return switch (standing) {
            case PUBLISHED -> "published: a figure read in a publication";
            case GUIDELINE -> "guideline: a recommendation of a society or an agency";
            case CONSENSUS -> "consensus: agreed by those who govern these rules";
            case LOCAL -> "local: a definition of this project, for a site to replace";
            case UNVERIFIED -> "UNVERIFIED: from memory or common practice, to be checked before use";
        };
    }
}
