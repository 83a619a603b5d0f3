package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

class BundleTest {
    @TempDir
    Path root;

    @BeforeEach
    void folders() throws IOException {
        Files.createDirectories(root.resolve("knowledge/demo"));
        Files.createDirectories(root.resolve("rules"));
    }

    @Test
    void shipped_isTheSameAsTheFolderItCameFrom() {
        Bundle folder = Bundle.in(Path.of(""));
        assertEquals(folder.texts(), Bundle.shipped().texts());
        assertEquals(folder.digest(), Bundle.shipped().digest());
    }

    @Test
    void digest_isFixed() {
        // sha256 over four bytes of length and the bytes, of path and text: computed outside this program
        assertEquals(
                "sha256:03c1d33c0837b93ef6c4e0b10af49b174bec170d3bada006103e854898c7b1be",
                Bundle.of(Map.of("rules/a.rule", "one", "knowledge/b.yaml", "tw\u00f6"))
                        .digest());
    }

    @Test
    void digest_changesWithOneByte() {
        assertNotEquals(
                Bundle.of(Map.of("rules/a.rule", "value 1")).digest(),
                Bundle.of(Map.of("rules/a.rule", "value 2")).digest());
    }

    @Test
    void digest_changesWithAName() {
        assertNotEquals(
                Bundle.of(Map.of("rules/a.rule", "x")).digest(),
                Bundle.of(Map.of("rules/b.rule", "x")).digest());
    }

    @Test
    void digest_tellsWhereAFileEnds() {
        assertNotEquals(
                Bundle.of(Map.of("rules/a.rule", "xy", "rules/b.rule", "z")).digest(),
                Bundle.of(Map.of("rules/a.rule", "x", "rules/b.rule", "yz")).digest());
    }

    @Test
    void in_readsRulesAndKnowledge_leavesTheRest() throws IOException {
        write("rules/1-findings/a.rule", "a");
        write("knowledge/b.yaml", "b");
        write("knowledge/demo/case.yaml", "a demo case is no knowledge");
        write("knowledge/README.md", "neither is a page");
        write("other/c.yaml", "nor another folder");
        assertEquals(
                Set.of("rules/1-findings/a.rule", "knowledge/b.yaml"),
                Bundle.in(root).texts().keySet());
    }

    @Test
    void in_doesNotFollowLinks() throws IOException {
        write("outside.yaml", "secret: 1");
        write("elsewhere/c.yaml", "secret: 2");
        write("knowledge/b.yaml", "b");
        Files.createSymbolicLink(root.resolve("knowledge/link.yaml"), root.resolve("outside.yaml"));
        Files.createSymbolicLink(root.resolve("knowledge/linked"), root.resolve("elsewhere"));
        assertEquals(Set.of("knowledge/b.yaml"), Bundle.in(root).texts().keySet());
    }

    @Test
    void in_folderThatIsALinkOrMissing() throws IOException {
        Files.delete(root.resolve("rules"));
        Files.createDirectories(root.resolve("elsewhere"));
        Files.createSymbolicLink(root.resolve("rules"), root.resolve("elsewhere"));
        Files.delete(root.resolve("knowledge/demo"));
        Files.delete(root.resolve("knowledge"));
        assertEquals(List.of("knowledge: is not a folder", "rules: is not a folder"), faults());
    }

    @Test
    void in_largestFileAndOneByteMore() throws IOException {
        write("knowledge/largest.yaml", "x".repeat(Bundle.LARGEST_FILE_BYTES));
        assertEquals(
                Bundle.LARGEST_FILE_BYTES,
                Bundle.in(root).texts().get("knowledge/largest.yaml").length());
        write("knowledge/larger.yaml", "x".repeat(Bundle.LARGEST_FILE_BYTES + 1));
        assertEquals(List.of("knowledge/larger.yaml: is larger than 1000000 bytes"), faults());
    }

    @Test
    void in_everyFaultAtOnce_notUtf8() throws IOException {
        Files.write(root.resolve("knowledge/latin.yaml"), new byte[] {'a', (byte) 0xe9});
        Files.write(root.resolve("rules/cut.rule"), new byte[] {(byte) 0xc3});
        assertEquals(List.of("knowledge/latin.yaml: is not UTF-8 text", "rules/cut.rule: is not UTF-8 text"), faults());
    }

    @Test
    void in_mostFilesAndOneMore() throws IOException {
        for (int i = 0; i < Bundle.MOST_FILES; i++) {
            write("rules/" + i + ".rule", "");
        }
        write("rules/notes.md", "does not count");
        assertEquals(Bundle.MOST_FILES, Bundle.in(root).texts().size());
        write("rules/one-more.rule", "");
        assertEquals(
                List.of("rules/one-more.rule: with this file the bundle holds more than 2000 files;"
                        + " the reading ended here"),
                faults());
    }

    @Test
    void in_mostEntries_countsWhatIsPassedOver() throws IOException {
        write("knowledge/b.yaml", "b");
        for (int i = 0; i < Bundle.MOST_ENTRIES; i++) {
            write("rules/" + i + ".md", "");
        }
        assertEquals(List.of("rules: holds more than 4000 files and folders"), faults());
    }

    @Test
    void in_largestTotalAndOneFileMore() throws IOException {
        for (int i = 0; i < 10; i++) {
            write("knowledge/" + i + ".yaml", "x".repeat(Bundle.LARGEST_FILE_BYTES));
        }
        assertEquals(10, Bundle.in(root).texts().size());
        write("rules/a.rule", "x");
        assertEquals(
                List.of("rules/a.rule: with this file the bundle is larger than 10000000 bytes;"
                        + " the reading ended here"),
                faults());
    }

    @Test
    void in_aFileThatWouldSilentlyNotBeRead_isAFault() throws IOException {
        List<String> names = List.of(
                "knowledge/limits.yml",
                "knowledge/x.rule",
                "rules/a.RULE",
                "rules/a.rule.txt",
                "rules/a.yaml",
                "rules/b");
        for (String name : names) {
            write(name, "x");
        }
        write("rules/.swap", "hidden");
        assertEquals(
                names,
                faults().stream()
                        .map(fault -> fault.replaceFirst(": would not be read.*", ""))
                        .toList());
    }

    @Test
    void in_namesThatAreNotPlain() throws IOException {
        List<String> names =
                List.of("knowledge/a b.yaml", "knowledge/c\\d.yaml", "knowledge/\u0435.yaml", "knowledge/e\u202e.yaml");
        for (String name : names) {
            write(name, "x");
        }
        List<String> faults = faults();
        assertEquals(names.size(), faults.size(), faults::toString);
        assertTrue(faults.stream().allMatch(fault -> fault.contains("is no name for a file of a bundle")));
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith("knowledge/e\\u202e.yaml")), faults::toString);
    }

    @Test
    void of_keepsTheSameBounds() {
        for (String name : List.of(
                "../a.rule",
                "/rules/a.rule",
                "rules/../a.rule",
                "rules//a.rule",
                "C:/rules/a.rule",
                "rules\\a.rule",
                "rules/a.rule ",
                "rules/a./b.rule",
                "rules/" + "a".repeat(200) + ".rule")) {
            FaultyInput refused = assertThrows(FaultyInput.class, () -> Bundle.of(Map.of(name, "")));
            assertTrue(refused.getMessage().contains("is no name for a file of a bundle"), refused::getMessage);
        }
        FaultyInput refused =
                assertThrows(FaultyInput.class, () -> Bundle.of(Map.of("rules/A.rule", "", "rules/a.rule", "")));
        assertEquals(
                "differs from rules/A.rule only in capitals",
                refused.faults().get(0).says());
    }

    @Test
    void at_takesFolderOrArchive_andRefusesWhatIsNeither() {
        assertEquals(Bundle.shipped().texts(), Bundle.at(Path.of("")).texts());
        FaultyInput refused = assertThrows(FaultyInput.class, () -> Bundle.at(root.resolve("none.zip")));
        assertEquals("none.zip: is not a file", refused.faults().get(0).toString());
    }

    @Test
    void under_takesFolderAndEnding() {
        Bundle bundle = Bundle.of(Map.of("rules/a.rule", "", "rules/changes/1.yaml", "", "knowledge/a.yaml", ""));
        assertEquals(Set.of("rules/a.rule"), bundle.under("rules/", ".rule").keySet());
    }

    @Test
    void texts_cannotBeChanged() {
        Map<String, String> texts = Bundle.of(Map.of("rules/a.rule", "a")).texts();
        assertThrows(UnsupportedOperationException.class, () -> texts.put("rules/b.rule", "b"));
    }

    @Test
    void shipped_holdsNoDemoCase() {
        Set<String> paths = Bundle.shipped().texts().keySet();
        assertTrue(paths.contains("knowledge/glossary.yaml"));
        assertFalse(paths.stream().anyMatch(path -> path.startsWith("knowledge/demo/")));
    }

    private List<String> faults() {
        return assertThrows(FaultyInput.class, () -> Bundle.in(root)).faults().stream()
                .map(Fault::toString)
                .toList();
    }

    private void write(String path, String text) throws IOException {
        Path file = root.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }
}
