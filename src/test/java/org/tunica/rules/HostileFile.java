package org.tunica.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;

/**
 * A hostile file, where a bundle would hold it, and what must happen.
 *
 * @param refused whether it must be refused, else accepted as what it says
 * @param says what must be said: fragments of faults with their places, or what was read
 */
record HostileFile(String name, String place, boolean refused, List<String> says) {
    private static final Path FOLDER = Path.of("src/test/resources/hostile");
    private static final String CHANGE = """
            number: "0900"
            title: a test
            status: draft
            authors: [ { role: rule author, initials: AK } ]
            reason: a test
            sources: [S-0900]
            rules: [EXC-900]
            limits: [%s]
            effective: 2026-01-01
            """;

    /** Every file listed in expected.txt. */
    static List<HostileFile> all() {
        List<HostileFile> files = new ArrayList<>();
        for (String line : new String(bytes("expected.txt"), StandardCharsets.UTF_8).split("\n")) {
            if (line.startsWith("    ")) {
                files.get(files.size() - 1).says().add(line.strip());
            } else if (!line.startsWith("#")) {
                String[] parts = line.split(" > ");
                files.add(new HostileFile(parts[0], parts[1], parts[2].equals("refused"), new ArrayList<>()));
            }
        }
        return files;
    }

    byte[] bytes() {
        return bytes(name);
    }

    private static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean isRule() {
        return place.endsWith(".rule");
    }

    /** The shipped knowledge, its change records without their rules, and one record for the hostile file. */
    static void writeSurroundings(Path root) throws IOException {
        for (Map.Entry<String, String> text : Texts.withoutRules().entrySet()) {
            write(root, text.getKey(), text.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }

    /** The bundle of the surroundings with this file put in. */
    Bundle bundle(Path root) throws IOException {
        String change = CHANGE.formatted(isRule() ? "" : "hostile.limit");
        write(root, "rules/changes/0900-hostile.yaml", change.getBytes(StandardCharsets.UTF_8));
        write(root, place, bytes());
        try {
            return Bundle.at(root);
        } finally {
            Files.delete(root.resolve(place));
        }
    }

    private static void write(Path root, String path, byte[] bytes) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }

    /** What a bundle that holds this file is read as; the knowledge around a rule file is read once for all. */
    private String read(Bundle bundle, Knowledge around) {
        if (isRule()) {
            Rule rule = RuleBook.of(bundle, around).rules().get(0);
            return "title: " + rule.title() + "\nbecause: " + rule.because() + "\n";
        }
        Knowledge knowledge = Knowledge.of(bundle);
        return "value: " + knowledge.value("hostile.limit") + "\nsays: "
                + knowledge.quantity("hostile.limit").says() + "\n";
    }

    /** What a reading told, or the faults it ended in. */
    String told(Bundle bundle, Knowledge around) {
        try {
            return "accepted\n" + read(bundle, around);
        } catch (FaultyInput e) {
            return told(e);
        }
    }

    static String told(FaultyInput faulty) {
        return "refused\n" + faulty.getMessage() + "\n";
    }

    /** What must be said and is not. */
    List<String> unsaid(String told) {
        if (!told.startsWith(refused ? "refused\n" : "accepted\n")) {
            return List.of((refused ? "refused" : "accepted") + " <- not so: " + told);
        }
        return says.stream()
                .filter(wanted -> !told.contains(refused ? wanted : "\n" + wanted + "\n"))
                .map(wanted -> wanted + " <- not in: " + told)
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }
}
