package org.tunica.store;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.security.DigestOutputStream;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes a snapshot as one archive that either database can be filled from. */
final class BackupWriter {
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);
    private static final JsonFactory JSON = new JsonFactory();

    private final Snapshot snapshot;
    private final ZipOutputStream zip;
    private final List<BackupEntry> entries = new ArrayList<>();

    private BackupWriter(Snapshot snapshot, ZipOutputStream zip) {
        this.snapshot = snapshot;
        this.zip = zip;
    }

    /**
     * Writes the archive and leaves the stream open.
     *
     * @throws UncheckedIOException when it cannot be written
     */
    static Backup write(Snapshot snapshot, String schema, Instant at, OutputStream out) {
        try {
            ZipOutputStream zip = new ZipOutputStream(out);
            BackupWriter writer = new BackupWriter(snapshot, zip);
            writer.table(Table.AUDIT);
            for (Table table : Table.KEPT) {
                writer.table(table);
            }
            AuditHead head = snapshot.head();
            writer.manifest(schema, at, head);
            zip.finish();
            long rows = writer.entries.stream().mapToLong(BackupEntry::rows).sum();
            return new Backup(at, head, rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void table(Table table) throws IOException {
        String name = BackupEntry.nameOf(table);
        zip.putNextEntry(entry(name));
        DigestOutputStream digesting = new DigestOutputStream(new Open(zip), Fingerprint.sha256());
        long[] rows = {0};
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), digesting)) {
            snapshot.rows(table, row -> {
                rows[0]++;
                line(json, row);
            });
        }
        zip.closeEntry();
        String digest = HexFormat.of().formatHex(digesting.getMessageDigest().digest());
        entries.add(new BackupEntry(name, rows[0], digest));
    }

    private static void line(JsonGenerator json, Row row) {
        json.writeStartObject();
        for (int i = 0; i < row.values().size(); i++) {
            Column column = row.table().columns().get(i);
            json.writeName(column.name());
            if (column.number()) {
                json.writeNumber(Long.parseLong(row.values().get(i)));
            } else {
                json.writeString(row.values().get(i));
            }
        }
        json.writeEndObject();
        json.writeRaw('\n');
    }

    private void manifest(String schema, Instant at, AuditHead head) throws IOException {
        zip.putNextEntry(entry(BackupEntry.MANIFEST));
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), new Open(zip))) {
            json.writeStartObject();
            json.writeStringProperty("format", Backup.FORMAT);
            json.writeStringProperty("schema", schema);
            json.writeStringProperty("at", at.toString());
            json.writeStringProperty("head", head.toString());
            json.writeArrayPropertyStart("entries");
            for (BackupEntry entry : entries) {
                json.writeStartObject();
                json.writeStringProperty("name", entry.name());
                json.writeNumberProperty("rows", entry.rows());
                json.writeStringProperty("sha256", entry.sha256());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        zip.closeEntry();
    }

    /** Without the time of day on the disk, so that the same data give the same bytes. */
    private static ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        return entry;
    }

    /** Stays open when what writes to it is closed. */
    private static final class Open extends FilterOutputStream {
        Open(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
