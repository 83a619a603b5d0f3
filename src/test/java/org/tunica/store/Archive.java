package org.tunica.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** A backup in the hands of somebody who can edit archives. */
final class Archive {
    private final Map<String, String> texts = new TreeMap<>();

    Archive(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                texts.put(
                        entry.getName(), new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
    }

    String text(String name) {
        return texts.get(name);
    }

    Archive change(String name, String pattern, String to) {
        String changed = texts.get(name).replaceFirst(pattern, to);
        if (changed.equals(texts.get(name))) {
            throw new IllegalArgumentException("nothing in " + name + " is " + pattern + ": " + changed);
        }
        texts.put(name, changed);
        return this;
    }

    Archive without(String name) {
        texts.remove(name);
        return this;
    }

    /** Puts digest and count of a file into the manifest anew. */
    Archive signed(String name) {
        long rows = texts.get(name).lines().count();
        return change(
                "manifest.json",
                "\"" + name + "\",\"rows\":[0-9]+,\"sha256\":\"[0-9a-f]+\"",
                "\"" + name + "\",\"rows\":" + rows + ",\"sha256\":\"" + sha256(texts.get(name)) + "\"");
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    void write(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> entry : texts.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes(StandardCharsets.UTF_8));
                zip.closeEntry();
            }
        }
    }
}
