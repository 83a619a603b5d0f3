package org.tunica.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.physics.HeatMemory;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.HeatQuestion;

/**
 * What searches for heat settings found, in a file that only grows: nothing is sought twice, today or in a year. A search
 * rests on nothing but its question and the constants of the model, so cases that share a wall share an answer, and an answer
 * stays true when cases come and go. A record that was cut off or damaged is not there.
 *
 * <p>The file names the constants it holds for; with others it begins anew. A program that computes otherwise is noticed by
 * computing one kept answer again, see {@link WorkFolder#heat}.
 */
final class HeatFile implements HeatMemory, AutoCloseable {
    private final Path file;
    private final FileChannel channel;
    private HeatIndex index = new HeatIndex();
    private int records;

    private HeatFile(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * The file of some constants, which is made if it is not there.
     *
     * @param constants their digest
     * @throws FaultyInput when it cannot be read or written
     */
    static HeatFile open(Path file, String constants) {
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            HeatFile opened = new HeatFile(file, channel);
            opened.begin(constants);
            return opened;
        } catch (IOException e) {
            throw unusable(file, e);
        }
    }

    /** The first record says for which constants the others hold. */
    private void begin(String constants) throws IOException {
        ByteBuffer head = ByteBuffer.allocate(HeatRecord.BYTES);
        head.put(("tunica-heat/1 " + constants + "\n").getBytes(StandardCharsets.UTF_8))
                .clear();
        ByteBuffer there = ByteBuffer.allocate(HeatRecord.BYTES);
        readFully(there, 0);
        if (!there.equals(head)) {
            channel.truncate(0);
            channel.write(head, 0);
        }
        records = 1;
        long whole = channel.size() / HeatRecord.BYTES;
        for (; records < whole; records++) {
            int record = records;
            at(record).ifPresent(answered -> index.add(HeatRecord.key(answered.question()), record));
        }
        channel.truncate(whole * HeatRecord.BYTES);
    }

    /** Forgets everything. */
    synchronized void clear(String constants) {
        try {
            channel.truncate(0);
            index = new HeatIndex();
            begin(constants);
        } catch (IOException e) {
            throw unusable(file, e);
        }
    }

    /** How many answers it holds. */
    synchronized int size() {
        return index.size();
    }

    /** One of the answers, to be held against the model. */
    synchronized Optional<HeatRecord.Answered> some() {
        for (int record = records / 2; record < records; record++) {
            Optional<HeatRecord.Answered> answered = record == 0 ? Optional.empty() : at(record);
            if (answered.isPresent()) {
                return answered;
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<HeatOutlook> recall(HeatQuestion question) {
        return mayHold(HeatRecord.key(question)).stream()
                .flatMap(record -> at(record).stream())
                .filter(answered -> answered.question().equals(question))
                .map(HeatRecord.Answered::outlook)
                .findFirst();
    }

    private synchronized List<Integer> mayHold(byte[] key) {
        return index.mayHold(key);
    }

    @Override
    public synchronized void keep(HeatQuestion question, HeatOutlook found) {
        try {
            channel.write(HeatRecord.bytes(question, found), (long) records * HeatRecord.BYTES);
            index.add(HeatRecord.key(question), records);
            records++;
        } catch (IOException e) {
            throw unusable(file, e);
        }
    }

    private Optional<HeatRecord.Answered> at(int record) {
        ByteBuffer bytes = ByteBuffer.allocate(HeatRecord.BYTES);
        try {
            readFully(bytes, (long) record * HeatRecord.BYTES);
            return HeatRecord.read(bytes);
        } catch (IOException e) {
            throw unusable(file, e);
        }
    }

    private void readFully(ByteBuffer bytes, long from) throws IOException {
        int read = 0;
        while (bytes.hasRemaining() && read >= 0) {
            read = channel.read(bytes, from + bytes.position());
        }
        bytes.clear();
    }

    private static FaultyInput unusable(Path file, IOException e) {
        return new FaultyInput(
                "replay", List.of(new Fault(file.toString(), "cannot be read or written: " + e.getMessage())));
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
