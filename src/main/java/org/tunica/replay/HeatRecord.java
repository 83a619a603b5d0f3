package org.tunica.replay;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;
import java.util.zip.CRC32C;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;

/**
 * One question to the heat model with its answer, as bytes of a fixed length: length and checksum of what follows, the
 * question, the answer, and zeros to the end. Every number is there to its last bit.
 */
final class HeatRecord {
    /** Bytes of a record; an answer takes about 520. */
    static final int BYTES = 768;

    private static final int HEAD = Integer.BYTES + Integer.BYTES;

    private HeatRecord() {}

    /** A question and its answer. */
    record Answered(HeatQuestion question, HeatOutlook outlook) {}

    /** The bytes of a question alone, by which a record is found. */
    static byte[] key(HeatQuestion question) {
        return written(out -> HeatWriter.question(out, question));
    }

    static ByteBuffer bytes(HeatQuestion question, HeatOutlook outlook) {
        byte[] content = written(out -> {
            HeatWriter.question(out, question);
            HeatWriter.outlook(out, outlook);
        });
        if (HEAD + content.length > BYTES) {
            throw new IllegalStateException("an answer of the heat model takes " + content.length + " bytes");
        }
        ByteBuffer record = ByteBuffer.allocate(BYTES);
        record.putInt(content.length).putInt(checksum(content)).put(content);
        return record.clear();
    }

    /** Nothing when the bytes are no whole record. */
    static Optional<Answered> read(ByteBuffer record) {
        return content(record).map(HeatRecord::answered);
    }

    private static Answered answered(byte[] content) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(content))) {
            HeatQuestion question = HeatBytes.question(in);
            return new Answered(question, HeatBytes.outlook(in, question));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<byte[]> content(ByteBuffer record) {
        int length = record.getInt(0);
        if (length <= 0 || length > BYTES - HEAD) {
            return Optional.empty();
        }
        byte[] content = Arrays.copyOfRange(record.array(), HEAD, HEAD + length);
        return checksum(content) == record.getInt(Integer.BYTES) ? Optional.of(content) : Optional.empty();
    }

    private static int checksum(byte[] content) {
        CRC32C crc = new CRC32C();
        crc.update(content);
        return (int) crc.getValue();
    }

    /** Writes into bytes. */
    private interface Writing {
        void to(DataOutputStream out) throws IOException;
    }

    private static byte[] written(Writing writing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(BYTES);
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            writing.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
