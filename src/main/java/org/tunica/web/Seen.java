package org.tunica.web;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** What somebody saw before changing it, by the preconditions of HTTP (RFC 9110, 13). */
final class Seen {
    private static final Pattern TAG = Pattern.compile("\"([0-9]{1,18})\"");

    private Seen() {}

    /**
     * The version that was seen; nought for something that is to be new.
     *
     * @throws ResponseStatusException when neither was said, so that nobody writes over what nobody saw
     */
    static long version(Optional<String> ifMatch, Optional<String> ifNoneMatch) {
        if (ifNoneMatch.filter("*"::equals).isPresent() && ifMatch.isEmpty()) {
            return 0;
        }
        if (ifMatch.isEmpty()) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED,
                    "say what you saw: If-Match with the version in quotes, or If-None-Match: * for something new");
        }
        Matcher tag = TAG.matcher(ifMatch.get());
        if (!tag.matches()) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "If-Match must hold one version in quotes");
        }
        return Long.parseLong(tag.group(1));
    }

    static String tag(long version) {
        return "\"" + version + "\"";
    }
}
