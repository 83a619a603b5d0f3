package org.tunica.replay;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import org.tunica.casefile.CaseFile;
import org.tunica.invented.InventedLibrary;
import org.tunica.pastcases.CaseLine;
import org.tunica.pastcases.PastCase;

/** Cases that nobody ever was, made while they are replayed. */
final class MadeUpCases extends ReplayedCases {
    private final InventedLibrary library;
    private final String origin;
    private final long count;
    private final long seed;
    private final Function<PastCase, String> toLine;

    /**
     * The first cases of a library.
     *
     * @param origin digest of the release whose distributions they are drawn from
     * @param seed of the library
     * @param toLine a past case as JSON on one line
     */
    MadeUpCases(InventedLibrary library, String origin, long seed, long count, Function<PastCase, String> toLine) {
        this.library = library;
        this.origin = origin;
        this.seed = seed;
        this.count = count;
        this.toLine = toLine;
    }

    @Override
    String says() {
        return "INVENTED: " + String.format(Locale.ROOT, "%,d", count) + " past cases of people who never were, seed "
                + seed;
    }

    @Override
    boolean invented() {
        return true;
    }

    @Override
    int each(int firstNumber, Consumer<Batch> taker) {
        int number = firstNumber;
        for (long from = 0; from < count; from += BATCH) {
            long to = Math.min(count, from + BATCH);
            List<CaseToReplay> cases = new ArrayList<>();
            for (long at = from; at < to; at++) {
                cases.add(new MadeUp(at));
            }
            String digest = Digest.of(origin, Long.toString(seed), from + " to " + to);
            taker.accept(new Batch(number++, digest, cases, to, count));
        }
        return number - firstNumber;
    }

    /** The case of a number. It was drawn with the words of one release; another has to read it as it stands in a file. */
    private final class MadeUp implements CaseToReplay {
        private final long number;

        MadeUp(long number) {
            this.number = number;
        }

        @Override
        public CaseFile read(ReleaseSide side) {
            PastCase made = library.at(number);
            if (side.name().digest().equals(origin)) {
                return made.caseFile();
            }
            byte[] line = toLine.apply(made).getBytes(StandardCharsets.UTF_8);
            return new CaseLine(number + 1, line, true).read(side.reader()).caseFile();
        }
    }
}
