package org.tunica.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.invented.InventedLibrary;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How many made-up cases, and from which seed. */
record InventedCount(long count, long seed) {
    private static final Pattern WORDS = Pattern.compile("([1-9]\\d{0,8})(?::(-?\\d{1,18}))?");

    /** Reads for example {@code 1000} or {@code 1000:7}. */
    static final class Reader implements ITypeConverter<InventedCount> {
        @Override
        public InventedCount convert(String text) {
            Matcher matcher = WORDS.matcher(text);
            if (!matcher.matches()) {
                throw new TypeConversionException(
                        "must be a number of cases and perhaps a seed, such as 1000 or 1000:7, is \"" + text + "\"");
            }
            return new InventedCount(
                    Long.parseLong(matcher.group(1)),
                    matcher.group(2) == null ? InventedLibrary.USUAL_SEED : Long.parseLong(matcher.group(2)));
        }
    }
}
