package org.tunica.pastcases;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;

/** Reads a file of past cases line by line and notes the faults of every line. */
final class CaseLines {
    private static final int TOLD_EVERY = 500;

    private final PastCaseReader reader;

    CaseLines(PastCaseReader reader) {
        this.reader = reader;
    }

    /** Takes a sound line. */
    interface Sink {
        void take(LineReader.Line line, PastCase read) throws IOException;
    }

    /** Takes a line and tells whether it was sound. */
    private interface Taking {
        boolean take(LineReader.Line line) throws IOException;
    }

    /**
     * Reads all lines; further faults of what is taken can be noted meanwhile.
     *
     * @return how many lines were sound
     */
    long each(CaseFileSource source, LineFaults faults, CaseProgress progress, Sink sink) throws IOException {
        return every(source, faults, progress, line -> one(line, faults, sink));
    }

    /** Hands over all lines as they stand, to be read elsewhere. */
    long eachUnread(CaseFileSource source, LineFaults faults, CaseProgress progress, Consumer<CaseLine> taker)
            throws IOException {
        return every(source, faults, progress, line -> {
            if (line.tooLong()) {
                return tooLong(line, faults);
            }
            taker.accept(new CaseLine(line.number(), line.bytes(), line.ended()));
            return true;
        });
    }

    private static long every(CaseFileSource source, LineFaults faults, CaseProgress progress, Taking taking)
            throws IOException {
        LineReader lines = new LineReader(source.in());
        long sound = 0;
        long empty = 0;
        Optional<LineReader.Line> next = next(lines, source, faults);
        while (next.isPresent() && !faults.full()) {
            LineReader.Line line = next.get();
            if (empty > 0 && !line.empty()) {
                faults.add(empty, "is empty; only the end of a file may be");
                empty = 0;
            }
            if (line.empty()) {
                empty = line.number();
            } else {
                sound += taking.take(line) ? 1 : 0;
            }
            if (line.number() % TOLD_EVERY == 0) {
                progress.at(source.readBytes(), source.sizeBytes(), sound);
            }
            next = next(lines, source, faults);
        }
        progress.at(source.readBytes(), source.sizeBytes(), sound);
        return sound;
    }

    private boolean one(LineReader.Line line, LineFaults faults, Sink sink) throws IOException {
        Optional<PastCase> read = read(line, faults);
        if (read.isPresent()) {
            sink.take(line, read.get());
        }
        return read.isPresent();
    }

    private Optional<PastCase> read(LineReader.Line line, LineFaults faults) {
        if (line.tooLong()) {
            tooLong(line, faults);
            return Optional.empty();
        }
        try {
            return Optional.of(new CaseLine(line.number(), line.bytes(), line.ended()).read(reader));
        } catch (FaultyInput e) {
            faults.add(e);
            return Optional.empty();
        }
    }

    private static boolean tooLong(LineReader.Line line, LineFaults faults) {
        faults.add(line.number(), "is longer than " + JsonText.LARGEST_BYTES + " bytes, the most a past case may be");
        return false;
    }

    /** A packed file that is broken or cut short shows only while it is unpacked. */
    private static Optional<LineReader.Line> next(LineReader lines, CaseFileSource source, LineFaults faults) {
        try {
            return lines.next();
        } catch (IOException e) {
            faults.add(lines.number() + 1, "cannot be read, the file is damaged or cut short: " + e.getMessage());
            return Optional.empty();
        }
    }

    /** What cannot be written, as a fault of the place. */
    static FaultyInput unwritable(String place, IOException e) {
        return new FaultyInput("case base", List.of(new Fault(place, "cannot be written: " + e.getMessage())));
    }
}
