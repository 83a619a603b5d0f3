package org.tunica.pastcases;

import java.io.BufferedInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** A file of past cases being read, packed with gzip or not; it tells how far the reading is. */
final class CaseFileSource implements AutoCloseable {
    private static final int GZIP_FIRST = 0x1f;
    private static final int GZIP_SECOND = 0x8b;

    private final long sizeBytes;
    private final Counting counting;
    private final InputStream in;

    private CaseFileSource(long sizeBytes, Counting counting, InputStream in) {
        this.sizeBytes = sizeBytes;
        this.counting = counting;
        this.in = in;
    }

    /**
     * Opens a file.
     *
     * @throws FaultyInput when it cannot be read
     */
    static CaseFileSource open(Path file) {
        try {
            Counting counting = new Counting(Files.newInputStream(file));
            return new CaseFileSource(Files.size(file), counting, unpacked(counting));
        } catch (NoSuchFileException e) {
            throw fault(file, "there is no such file");
        } catch (AccessDeniedException e) {
            throw fault(file, "may not be read");
        } catch (IOException e) {
            throw fault(file, "cannot be read: " + e.getMessage());
        }
    }

    private static InputStream unpacked(Counting counting) throws IOException {
        BufferedInputStream in = new BufferedInputStream(counting);
        in.mark(2);
        boolean gzip = in.read() == GZIP_FIRST && in.read() == GZIP_SECOND;
        in.reset();
        return gzip ? new GZIPInputStream(in) : in;
    }

    private static FaultyInput fault(Path file, String says) {
        return new FaultyInput("input", List.of(new Fault(file.toString(), says)));
    }

    InputStream in() {
        return in;
    }

    long sizeBytes() {
        return sizeBytes;
    }

    long readBytes() {
        return counting.count;
    }

    @Override
    public void close() {
        try {
            in.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Counting extends FilterInputStream {
        private long count;

        Counting(InputStream in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            int one = super.read();
            count += one < 0 ? 0 : 1;
            return one;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
            int read = super.read(bytes, from, length);
            count += Math.max(0, read);
            return read;
        }
    }
}
