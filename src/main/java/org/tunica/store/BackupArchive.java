package org.tunica.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.tunica.casefile.Faults;

/** An archive that {@link BackupWriter} wrote, or that somebody says it did. */
final class BackupArchive implements AutoCloseable {
    private static final List<Table> TABLES =
            Stream.concat(Stream.of(Table.AUDIT), Table.KEPT.stream()).toList();

    private final String name;
    private final ZipFile zip;
    private final Manifest manifest;

    private BackupArchive(String name, ZipFile zip, Manifest manifest) {
        this.name = name;
        this.zip = zip;
        this.manifest = manifest;
    }

    /**
     * Opens an archive whose manifest can be read.
     *
     * @throws org.tunica.casefile.FaultyInput when it cannot
     */
    static BackupArchive open(Path file) throws IOException {
        ZipFile zip = new ZipFile(file.toFile());
        try {
            return new BackupArchive(file.toString(), zip, Manifest.read(zip));
        } catch (RuntimeException | IOException e) {
            zip.close();
            throw e;
        }
    }

    Manifest manifest() {
        return manifest;
    }

    /**
     * Reads all of it once.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault: files that are not those named, digests and counts that
     *     differ, rows that are none, an audit trail that does not hold
     */
    void check() throws IOException {
        Faults faults = new Faults();
        List<String> expected = Stream.concat(TABLES.stream().map(BackupEntry::nameOf), Stream.of(BackupEntry.MANIFEST))
                .sorted()
                .toList();
        List<String> found = zip.stream()
                .map(ZipEntry::getName)
                .sorted()
                .limit(2L * expected.size())
                .toList();
        if (!found.equals(expected)) {
            faults.add("archive", "must hold " + expected + ", holds " + found);
        }
        faults.throwIfAny(name);
        ChainCheck chain = new ChainCheck();
        for (Table table : TABLES) {
            check(table, table == Table.AUDIT ? chain::next : row -> {}, faults);
        }
        chain.end(manifest.head());
        chain.bad().ifPresent(fault -> faults.add(fault.place(), fault.says()));
        faults.throwIfAny(name);
    }

    private void check(Table table, Consumer<Row> taker, Faults faults) throws IOException {
        String entry = BackupEntry.nameOf(table);
        MessageDigest digest = Fingerprint.sha256();
        try (InputStream in = new DigestInputStream(stream(table), digest)) {
            long rows = RowReader.read(table, in, taker);
            String sha256 = HexFormat.of().formatHex(digest.digest());
            manifest.check(new BackupEntry(entry, rows, sha256), faults);
        } catch (RowReader.NoRow e) {
            faults.add(entry, e.getMessage());
        }
    }

    /** Every row, table by table, the audit trail first. */
    void rows(Consumer<Row> taker) throws IOException {
        for (Table table : TABLES) {
            try (InputStream in = stream(table)) {
                RowReader.read(table, in, taker);
            }
        }
    }

    private InputStream stream(Table table) throws IOException {
        return zip.getInputStream(zip.getEntry(BackupEntry.nameOf(table)));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
