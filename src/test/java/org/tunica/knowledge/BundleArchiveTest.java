package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** An archive is as good as the folder it was made of, or refused; it never takes more than its bounds. */
class BundleArchiveTest {
    private static final Map<String, String> SOUND = Map.of("knowledge/b.yaml", "b: 1", "rules/a.rule", "# a");

    @TempDir
    Path folder;

    @Test
    void theShippedBundle_packed_isTheSameBundle() throws IOException {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.put("README.md", "for people");
        texts.put("knowledge/README.md", "for people");
        texts.put("features/x.feature", "passed over");
        Bundle read = Bundle.at(write(zip(texts)));
        assertEquals(Bundle.shipped().texts(), read.texts());
        assertEquals(Bundle.shipped().digest(), read.digest());
    }

    @Test
    void everyFaultAtOnce() throws IOException {
        Map<String, String> texts = new TreeMap<>(SOUND);
        texts.put("../evil.rule", "x");
        texts.put("/etc/evil.rule", "x");
        texts.put("C:/evil.rule", "x");
        texts.put("rules\\evil.rule", "x");
        texts.put("rules/../../evil.rule", "x");
        texts.put("rules/a\u202eelur.rule", "x");
        texts.put("rules/A.rule", "x");
        texts.put("rules/note.txt", "x");
        texts.put("knowledge/large.yaml", "x".repeat(Bundle.LARGEST_FILE_BYTES + 1));
        List<String> faults = faults(write(zip(texts)));
        assertEquals(9, faults.size(), faults::toString);
        for (String name : List.of(
                "../evil.rule",
                "/etc/evil.rule",
                "C:/evil.rule",
                "rules\\evil.rule",
                "rules/../../evil.rule",
                "rules/a\\u202eelur.rule")) {
            assertTrue(faults.stream().anyMatch(fault -> fault.startsWith(name + ": is no name")), faults::toString);
        }
        assertTrue(faults.contains("knowledge/large.yaml: is larger than 1000000 bytes"), faults::toString);
        assertTrue(faults.contains("rules/a.rule: differs from rules/A.rule only in capitals"), faults::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"rules/bomb.rule", "elsewhere/bomb.bin", "rules/"})
    void aBombThatInflatesAThousandfold_endsAtTheBound(String name) throws IOException {
        byte[] zip = zipOf(name, 60_000_000);
        assertTrue(zip.length < 80_000, "packed to " + zip.length);
        Path file = write(zip);
        List<String> faults = assertTimeout(Duration.ofSeconds(5), () -> faults(file));
        assertTrue(
                faults.get(faults.size() - 1)
                        .endsWith("the archive inflates to more than 10000000 bytes; the reading ended here"),
                faults::toString);
    }

    @Test
    void manySmallBombs_countTogether() throws IOException {
        Map<String, String> texts = new TreeMap<>(SOUND);
        String zeros = "0".repeat(Bundle.LARGEST_FILE_BYTES);
        for (int i = 0; i < 30; i++) {
            texts.put("rules/" + i + ".rule", zeros);
        }
        assertTrue(faults(write(zip(texts))).get(0).contains("inflates to more than 10000000 bytes"));
    }

    @Test
    void anArchiveInAnArchive_isNeverOpened() throws IOException {
        byte[] bomb = zipOf("knowledge/bomb.yaml", 60_000_000);
        ByteArrayOutputStream nested = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(nested)) {
            for (int i = 0; i < 10; i++) {
                entry(out, "rules/nested" + i + ".zip", bomb);
            }
        }
        List<String> faults = faults(write(nested.toByteArray()));
        assertTrue(faults.get(0).startsWith("rules/nested0.zip: would not be read"), faults::toString);
    }

    @Test
    void tooManyEntries() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        for (int i = 0; i <= Bundle.MOST_ENTRIES; i++) {
            texts.put("elsewhere/" + i, "");
        }
        assertEquals(List.of("b.zip: holds more than 4000 entries"), faults(write(zip(texts))));
    }

    @Test
    void aNameThatStandsTwice() throws IOException {
        Map<String, String> texts = new TreeMap<>(SOUND);
        texts.put("rules/b.rule", "# other");
        byte[] zip = replaced(zip(texts), "rules/b.rule", "rules/a.rule");
        assertEquals(List.of("rules/a.rule: stands twice"), faults(write(zip)));
    }

    @Test
    void aNameThatIsAnotherInTheDirectory() throws IOException {
        byte[] zip = zip(SOUND);
        byte[] name = "rules/a.rule".getBytes(StandardCharsets.UTF_8);
        zip[lastIndexOf(zip, name) + 6] = 'x';
        assertEquals(List.of("b.zip: its entries are not those its directory lists"), faults(write(zip)));
    }

    @Test
    void sizesThatLie_inTheEntryOrInTheDirectory() throws IOException {
        byte[] directory = "PK\u0001\u0002".getBytes(StandardCharsets.ISO_8859_1);
        byte[] descriptor = "PK\u0007\u0008".getBytes(StandardCharsets.ISO_8859_1);
        byte[] smallInDirectory = zip(SOUND);
        smallInDirectory[lastIndexOf(smallInDirectory, directory) + 24] = 1;
        assertEquals(List.of("b.zip: its entries are not those its directory lists"), faults(write(smallInDirectory)));
        byte[] otherSum = zip(SOUND);
        otherSum[lastIndexOf(otherSum, descriptor) + 4] ^= 1;
        assertTrue(faults(write(otherSum)).get(0).contains("is not a readable .zip archive"));
        byte[] smallInEntry = zip(SOUND);
        smallInEntry[lastIndexOf(smallInEntry, descriptor) + 12] = 1;
        assertTrue(faults(write(smallInEntry)).get(0).contains("is not a readable .zip archive"));
    }

    /** Whatever is cut off, nothing but faults comes out. */
    @Test
    void anArchiveCutShort_anywhere() throws IOException {
        byte[] zip = zip(SOUND);
        for (int length = 0; length < zip.length; length++) {
            List<String> faults = faults(write(Arrays.copyOf(zip, length)));
            assertTrue(faults.get(0).startsWith("b.zip: is not a readable .zip archive"), faults::toString);
        }
    }

    /** Whatever bit is turned, the bundle is refused or the same. */
    @Test
    void anArchiveWithOneBitTurned_anywhere() throws IOException {
        byte[] zip = zip(SOUND);
        for (int bit = 0; bit < zip.length * 8; bit++) {
            byte[] turned = zip.clone();
            turned[bit / 8] ^= (byte) (1 << bit % 8);
            Path file = write(turned);
            try {
                assertEquals(SOUND, Bundle.inArchive(file).texts());
            } catch (FaultyInput e) {
                assertTrue(e.faults().stream().noneMatch(fault -> fault.says().isBlank()));
            }
        }
    }

    @Test
    void somethingBeforeTheArchive_orNoRulesInIt() throws IOException {
        byte[] zip = zip(SOUND);
        byte[] after = new byte[zip.length + 6];
        System.arraycopy("GIF89a".getBytes(StandardCharsets.US_ASCII), 0, after, 0, 6);
        System.arraycopy(zip, 0, after, 6, zip.length);
        assertEquals(List.of("b.zip: its entries are not those its directory lists"), faults(write(after)));
        assertEquals(List.of("b.zip: holds no rules/"), faults(write(zip(Map.of("knowledge/b.yaml", "b")))));
    }

    private static byte[] zip(Map<String, String> texts) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> text : new TreeMap<>(texts).entrySet()) {
                entry(out, text.getKey(), text.getValue().getBytes(StandardCharsets.UTF_8));
            }
        }
        return bytes.toByteArray();
    }

    private static void entry(ZipOutputStream out, String name, byte[] bytes) throws IOException {
        out.putNextEntry(new ZipEntry(name));
        out.write(bytes);
        out.closeEntry();
    }

    /** An archive of one entry of so many zeros. */
    private static byte[] zipOf(String name, int zeros) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            out.putNextEntry(new ZipEntry(name));
            byte[] piece = new byte[1_000_000];
            for (int written = 0; written < zeros; written += piece.length) {
                out.write(piece);
            }
            out.closeEntry();
        }
        return bytes.toByteArray();
    }

    private static byte[] replaced(byte[] zip, String name, String other) {
        return new String(zip, StandardCharsets.ISO_8859_1).replace(name, other).getBytes(StandardCharsets.ISO_8859_1);
    }

    private static int lastIndexOf(byte[] zip, byte[] wanted) {
        String text = new String(zip, StandardCharsets.ISO_8859_1);
        return text.lastIndexOf(new String(wanted, StandardCharsets.ISO_8859_1));
    }

    private Path write(byte[] zip) throws IOException {
        return Files.write(folder.resolve("b.zip"), zip);
    }

    private static List<String> faults(Path zip) {
        return assertThrows(FaultyInput.class, () -> Bundle.inArchive(zip)).faults().stream()
                .map(Fault::toString)
                .toList();
    }
}
