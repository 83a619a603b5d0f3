package org.tunica.pastcases;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;
import org.tunica.casefile.JsonText;

/** Cuts a stream into lines, each with its number; what makes a line too long is passed over, not kept. */
final class LineReader {
    private static final int BUFFER_BYTES = 1 << 16;

    private final InputStream in;
    private final byte[] buffer = new byte[BUFFER_BYTES];
    private int at;
    private int end;
    private long number;

    LineReader(InputStream in) {
        this.in = in;
    }

    /**
     * One line.
     *
     * @param bytes without what ends it
     * @param ended whether something ended it; only the last line of a file may lack that
     * @param tooLong whether it was longer than a past case may be; the bytes are then its beginning
     */
    record Line(long number, byte[] bytes, boolean ended, boolean tooLong) {
        boolean empty() {
            return bytes.length == 0;
        }
    }

    /** The next line, or nothing at the end. */
    Optional<Line> next() throws IOException {
        if (!filled()) {
            return Optional.empty();
        }
        number++;
        ByteArrayOutputStream rest = new ByteArrayOutputStream(0);
        boolean tooLong = false;
        boolean ended = false;
        while (!ended && filled()) {
            int start = at;
            while (at < end && buffer[at] != '\n') {
                at++;
            }
            tooLong |= rest.size() + at - start > JsonText.LARGEST_BYTES;
            if (!tooLong) {
                rest.write(buffer, start, at - start);
            }
            ended = at < end;
            at += ended ? 1 : 0;
        }
        return Optional.of(new Line(number, withoutReturn(rest.toByteArray()), ended, tooLong));
    }

    private static byte[] withoutReturn(byte[] line) {
        int length = line.length;
        return length > 0 && line[length - 1] == '\r' ? Arrays.copyOf(line, length - 1) : line;
    }

    /** The number of the line read last. */
    long number() {
        return number;
    }

    private boolean filled() throws IOException {
        if (at < end) {
            return true;
        }
        at = 0;
        end = Math.max(0, in.read(buffer));
        return end > 0;
    }
}
