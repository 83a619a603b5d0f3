package org.tunica.store;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;

/** What an archive says it holds. */
record Manifest(String schema, Instant at, AuditHead head, List<BackupEntry> entries) {
    Manifest {
        entries = List.copyOf(entries);
    }

    /** @throws org.tunica.casefile.FaultyInput with every fault of it */
    static Manifest read(ZipFile zip) throws IOException {
        String what = zip.getName();
        ZipEntry entry = zip.getEntry(BackupEntry.MANIFEST);
        if (entry == null) {
            throw Place.fault(what, "is no backup of this program: it holds no " + BackupEntry.MANIFEST);
        }
        Faults faults = new Faults();
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes(JsonText.LARGEST_BYTES + 1);
            FieldReader reader = new FieldReader(JsonText.parse(what, bytes), "$", faults);
            String format = reader.requiredText("format");
            if (!format.equals(Backup.FORMAT)) {
                reader.fault("format", "must be " + Backup.FORMAT + ", is \"" + format + "\"");
            }
            faults.throwIfAny(what);
            return of(what, reader, faults);
        }
    }

    private static Manifest of(String what, FieldReader reader, Faults faults) {
        String schema = reader.requiredText("schema");
        String at = reader.requiredText("at");
        String head = reader.requiredText("head");
        List<BackupEntry> entries = reader.required("entries", reader.objects("entries")).orElse(List.of()).stream()
                .map(Manifest::entry)
                .toList();
        reader.done();
        faults.throwIfAny(what);
        try {
            return new Manifest(schema, Instant.parse(at), AuditHead.of(head), entries);
        } catch (DateTimeParseException e) {
            throw Place.fault(what, "$.at is no time: " + at);
        }
    }

    private static BackupEntry entry(FieldReader reader) {
        String name = reader.requiredText("name");
        double rows = reader.requiredNumber("rows");
        String sha256 = reader.requiredText("sha256");
        reader.done();
        return new BackupEntry(name, (long) rows, sha256);
    }

    /** Compares what was found with what is said. */
    void check(BackupEntry found, Faults faults) {
        BackupEntry said = entries.stream()
                .filter(entry -> entry.name().equals(found.name()))
                .findFirst()
                .orElse(new BackupEntry(found.name(), 0, ""));
        if (said.rows() != found.rows()) {
            faults.add(found.name(), "holds " + found.rows() + " rows, the manifest says " + said.rows());
        }
        if (!said.sha256().equals(found.sha256())) {
            faults.add(found.name(), "has not the digest the manifest says; it was changed or damaged");
        }
    }
}
