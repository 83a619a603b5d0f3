package org.tunica.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.tunica.casefile.CaseFile;
import org.tunica.pastcases.CaseLine;

/** Released past cases, read line by line. */
final class BaseCases extends ReplayedCases {
    private final String says;
    private final PastLines lines;

    BaseCases(String says, PastLines lines) {
        this.says = says;
        this.lines = lines;
    }

    @Override
    String says() {
        return says;
    }

    @Override
    boolean invented() {
        return false;
    }

    @Override
    int each(int firstNumber, Consumer<Batch> taker) {
        Gathering gathering = new Gathering(firstNumber, taker);
        lines.eachLine(gathering::line, gathering::at);
        gathering.flush();
        return gathering.number - firstNumber;
    }

    /** Gathers lines until a batch is full. */
    private static final class Gathering {
        private final Consumer<Batch> taker;
        private final List<CaseToReplay> cases = new ArrayList<>();
        private Digest digest = new Digest();
        private int number;
        private long doneBytes;
        private long allBytes;

        Gathering(int firstNumber, Consumer<Batch> taker) {
            this.number = firstNumber;
            this.taker = taker;
        }

        void at(long done, long all, long sound) {
            doneBytes = done;
            allBytes = all;
        }

        void line(CaseLine line) {
            digest.and(Long.toString(line.number())).and(line.bytes());
            cases.add(side -> read(line, side));
            if (cases.size() == BATCH) {
                flush();
            }
        }

        void flush() {
            if (!cases.isEmpty()) {
                taker.accept(new Batch(number++, digest.text(), cases, doneBytes, allBytes));
                cases.clear();
                digest = new Digest();
            }
        }

        private static CaseFile read(CaseLine line, ReleaseSide side) {
            return line.readCase(side.reader());
        }
    }
}
