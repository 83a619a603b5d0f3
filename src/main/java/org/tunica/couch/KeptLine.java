package org.tunica.couch;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import org.tunica.store.KeptDocument;
import org.tunica.store.Stamp;

/**
 * Something kept with a case, in a list.
 *
 * @param number among those of its kind
 * @param caseVersion the version of the case it was made from
 * @param release version of the rules and knowledge it was made with
 * @param at when, in UTC
 */
public record KeptLine(long number, long caseVersion, String release, String at, String by) {
    private static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneOffset.UTC);

    static KeptLine of(KeptDocument kept) {
        return new KeptLine(
                kept.number(),
                kept.document().caseVersion(),
                kept.document().origin().releaseVersion(),
                minute(kept.stamp()),
                kept.stamp().by());
    }

    /** When something came to be, to the minute. */
    public static String minute(Stamp stamp) {
        return MINUTE.format(stamp.at()) + " UTC";
    }
}
