package org.tunica.similar;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;

/** Past cases in a file, one on each line; a case is asked for again by the byte its line starts at. */
final class CaseLines implements CaseSource {
    private static final int CHUNK_BYTES = 1 << 16;

    private final Path file;
    private final PastCaseReader reader;
    private final String digest;

    /** @throws FaultyInput when the file cannot be read */
    CaseLines(Path file, Knowledge knowledge) {
        this.file = file;
        this.reader = new PastCaseReader(knowledge);
        this.digest = digestOf(file);
    }

    private static String digestOf(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            new DigestInputStream(in, sha).transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(sha.digest());
        } catch (IOException e) {
            throw unreadable(file, e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    @Override
    public boolean invented() {
        return false;
    }

    @Override
    public String says() {
        return "Past cases of " + file.getFileName() + ".";
    }

    @Override
    public String digest() {
        return digest;
    }

    @Override
    public void each(Taker taker) {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), CHUNK_BYTES)) {
            long where = 0;
            int number = 1;
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            for (int next = in.read(); next >= 0 || line.size() > 0; next = in.read()) {
                if (next != '\n' && next >= 0) {
                    line.write(next);
                    continue;
                }
                if (line.size() > 0) {
                    taker.take(where, reader.read(file.getFileName() + ", line " + number, line.toByteArray()));
                }
                where += line.size() + 1;
                number++;
                line.reset();
            }
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    @Override
    public PastCase at(long where) {
        try (RandomAccessFile lines = new RandomAccessFile(file.toFile(), "r")) {
            lines.seek(where);
            ByteArrayOutputStream line = new ByteArrayOutputStream();
            byte[] chunk = new byte[CHUNK_BYTES];
            for (int read = lines.read(chunk); read > 0; read = lines.read(chunk)) {
                int end = 0;
                while (end < read && chunk[end] != '\n') {
                    end++;
                }
                line.write(chunk, 0, end);
                if (end < read) {
                    break;
                }
            }
            return reader.read(file.getFileName() + ", byte " + where, line.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FaultyInput unreadable(Path file, IOException e) {
        return new FaultyInput(
                "case base", List.of(new Fault(file.getFileName().toString(), "cannot be read: " + e.getMessage())));
    }
}
