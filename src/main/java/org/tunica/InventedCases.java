package org.tunica;

import java.util.Locale;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.CaseSource;

/** The library of made-up cases as something to search; a case is asked for again by its number. */
final class InventedCases implements CaseSource {
    private final InventedLibrary library;
    private final long seed;
    private final long count;

    InventedCases(InventedLibrary library, long seed, long count) {
        this.library = library;
        this.seed = seed;
        this.count = count;
    }

    @Override
    public boolean invented() {
        return true;
    }

    @Override
    public String says() {
        return String.format(
                Locale.ROOT, "INVENTED: %,d past cases of people who never were. They prove nothing.", count);
    }

    @Override
    public String digest() {
        return "invented, seed " + seed + ", " + count;
    }

    @Override
    public void each(Taker taker) {
        for (long number = 0; number < count; number++) {
            taker.take(number, library.at(number));
        }
    }

    @Override
    public PastCase at(long where) {
        return library.at(where);
    }
}
