package org.tunica.store;

import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** Texts that both databases give back as they got them. */
final class Texts {
    /** The longest text kept, in characters; an advice on both legs with every reason needs about half a million. */
    static final int LONGEST = 16_000_000;

    private Texts() {}

    /**
     * The text itself.
     *
     * @throws FaultyInput when it is too long, holds a zero character, or half a character
     */
    static String kept(String place, String text) {
        if (text.length() > LONGEST) {
            throw fault(place, "is " + text.length() + " characters long; at most " + LONGEST + " are kept");
        }
        if (text.indexOf(0) >= 0) {
            throw fault(place, "holds a zero character, which cannot be kept");
        }
        try {
            StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
            return text;
        } catch (CharacterCodingException e) {
            throw fault(place, "holds half a character, which cannot be kept");
        }
    }

    /** @throws FaultyInput when the text has not the shape of its kind */
    static String shaped(String place, String text, String shape) {
        if (!text.matches(shape)) {
            throw fault(place, "\"" + text + "\" is not written as " + shape);
        }
        return text;
    }

    static FaultyInput fault(String place, String says) {
        return new FaultyInput("store", List.of(new Fault(place, says)));
    }
}
