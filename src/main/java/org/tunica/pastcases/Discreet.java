package org.tunica.pastcases;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/**
 * Says what is wrong with a past case without saying what stood there: it may be what should never have got in, and messages
 * end up in logs.
 */
final class Discreet {
    private static final String UNSAID = "[...]";
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"|'([^']*)'");
    private static final Pattern OWN_WORDS =
            Pattern.compile("tunica-[a-z]+/1|p-|site-|p-[0-9a-f]{24}|[a-z]+(?:-[a-z0-9]+)*");
    private static final Pattern ECHO = Pattern.compile("(, is |, not )[^;]*");
    private static final Pattern NO_FIELD = Pattern.compile("is not a field of this object.*");

    private Discreet() {}

    static FaultyInput of(FaultyInput faulty) {
        return new FaultyInput(
                faulty.what(), faulty.faults().stream().map(Discreet::fault).toList());
    }

    private static Fault fault(Fault fault) {
        boolean strange = NO_FIELD.matcher(fault.says()).matches();
        String place = strange ? fault.place().replaceAll("\\.[^.]*$", "." + UNSAID) : fault.place();
        return new Fault(place, says(strange ? "is not a field of this object" : fault.says()));
    }

    /** What stands first in quotes comes from the input; further quotes are words the reader would have known. */
    private static String says(String says) {
        String quiet = ECHO.matcher(says).replaceAll("$1" + Matcher.quoteReplacement(UNSAID));
        Matcher quoted = QUOTED.matcher(quiet);
        StringBuilder out = new StringBuilder();
        while (quoted.find()) {
            String text = quoted.group(1) == null ? quoted.group(2) : quoted.group(1);
            boolean own = quoted.start() > 0 && OWN_WORDS.matcher(text).matches();
            quoted.appendReplacement(out, Matcher.quoteReplacement(own ? quoted.group() : UNSAID));
        }
        return quoted.appendTail(out).toString();
    }
}
