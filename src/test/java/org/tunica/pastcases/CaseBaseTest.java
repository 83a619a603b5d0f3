package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

class CaseBaseTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final List<PastCase> CASES =
            TUNICA.pastCases().inventedLibrary(3).cases(40).toList();
    private static final List<String> LINES =
            CASES.stream().map(TUNICA.pastCases()::toLine).toList();

    @TempDir
    private Path folder;

    private CaseBase base;

    @BeforeEach
    void base() {
        base = TUNICA.pastCases().caseBase(folder.resolve("base"));
    }

    @Test
    void import_export_areTheSameBytes() {
        Imported imported = importing(text(LINES));
        assertEquals(new Imported(40, 0, imported.digest()), imported);
        assertEquals(text(LINES), exported(CaseFilter.ALL));
        assertEquals(imported.digest(), base.check(CaseProgress.NONE).digest());
        assertEquals(List.of(".lock", CaseBase.CASES), names());
    }

    @Test
    void digest_isThatOfTheFile() throws Exception {
        importing(text(LINES));
        byte[] sha256 = MessageDigest.getInstance("SHA-256")
                .digest(Files.readAllBytes(folder.resolve("base").resolve(CaseBase.CASES)));
        assertEquals(
                "sha256:" + HexFormat.of().formatHex(sha256),
                base.check(CaseProgress.NONE).digest());
    }

    @Test
    void secondImport_comesBehindTheFirst() {
        importing(text(LINES.subList(0, 25)));
        assertEquals(25, importing(text(LINES.subList(25, 40))).before());
        assertEquals(text(LINES), exported(CaseFilter.ALL));
        List<PastCase> read = new ArrayList<>();
        assertEquals(40, base.each(read::add, CaseProgress.NONE));
        assertEquals(CASES, read);
    }

    @Test
    void released_areAddedAllOrNone() {
        base.add(CASES.subList(0, 3));
        assertEquals(List.of("line 2"), lines(() -> base.add(List.of(CASES.get(3), CASES.get(1)))));
        assertEquals(text(LINES.subList(0, 3)), exported(CaseFilter.ALL));
        base.add(List.of(CASES.get(3)));
        assertEquals(text(LINES.subList(0, 4)), exported(CaseFilter.ALL));
    }

    @Test
    void everyFaultyLine_isToldWithItsNumber_andNothingIsBroughtIn() {
        importing(text(LINES.subList(0, 2)));
        List<String> faulty = new ArrayList<>(LINES.subList(2, 12));
        faulty.set(1, "{ \"format\": \"tunica-past/1\" ");
        faulty.set(4, faulty.get(4).replaceFirst("\"site\":\"[^\"]*\"", "\"site\":\"Clinic at the river\""));
        faulty.set(6, "");
        faulty.set(8, LINES.get(0));
        faulty.set(9, LINES.get(2));
        FaultyInput e = assertThrows(FaultyInput.class, () -> importing(text(faulty)));
        assertEquals(
                List.of("line 2, $", "line 5, $.site", "line 7", "line 9", "line 10"),
                e.faults().stream().map(Fault::place).toList());
        assertEquals(text(LINES.subList(0, 2)), exported(CaseFilter.ALL));
    }

    @Test
    void faults_areToldUpToABound() {
        String text = "{}\n".repeat(5_000);
        FaultyInput e = assertThrows(FaultyInput.class, () -> importing(text));
        assertEquals(LineFaults.MOST + 1, e.faults().size());
        assertTrue(e.getMessage().contains("the reading ended here"));
    }

    @Test
    void returnsAndEmptyLinesAtTheEnd_areNoFaults() {
        importing(String.join("\r\n", LINES) + "\r\n\r\n\n");
        assertEquals(text(LINES), exported(CaseFilter.ALL));
    }

    @Test
    void lastLineWithoutAnEnd_isReadWhenItIsWhole() {
        importing(String.join("\n", LINES));
        assertEquals(text(LINES), exported(CaseFilter.ALL));
    }

    @Test
    void lastLineCutShort_isNamedAsThat() {
        String whole = text(LINES);
        FaultyInput e = assertThrows(FaultyInput.class, () -> importing(whole.substring(0, whole.length() - 300)));
        assertTrue(e.getMessage().contains("line 40: is the last and nothing ends it: the file may be cut short"));
    }

    @Test
    void otherEncoding_andLongLine_areNamed() throws IOException {
        Path latin = Files.write(
                folder.resolve("latin"),
                (LINES.get(0) + "\n" + LINES.get(1).replace("invented: ", "\u00fcber "))
                        .getBytes(StandardCharsets.ISO_8859_1));
        assertTrue(assertThrows(FaultyInput.class, () -> base.importFrom(latin, CaseProgress.NONE))
                .getMessage()
                .contains("line 2, $: is not UTF-8 text"));
        String tooLong = LINES.get(0) + " ".repeat(1_000_000) + "\n" + LINES.get(1) + "\n";
        FaultyInput e = assertThrows(FaultyInput.class, () -> importing(tooLong));
        assertEquals(1, e.faults().size(), "the line behind it is sound: " + e.getMessage());
        assertTrue(e.getMessage().contains("line 1: is longer than 1000000 bytes"));
    }

    @Test
    void packedFile_isUnpacked_andOneCutShortIsNamed() throws IOException {
        Path packed = Files.write(folder.resolve("packed"), packed(text(LINES)));
        base.importFrom(packed, CaseProgress.NONE);
        assertEquals(text(LINES), exported(CaseFilter.ALL));
        Path half = Files.write(folder.resolve("half"), Arrays.copyOf(packed(text(LINES)), 9_000));
        CaseBase other = TUNICA.pastCases().caseBase(folder.resolve("other"));
        assertTrue(assertThrows(FaultyInput.class, () -> other.importFrom(half, CaseProgress.NONE))
                .getMessage()
                .contains("damaged or cut short"));
    }

    @Test
    void export_byTechniqueAndYear() {
        importing(text(LINES));
        CaseFilter foam = new CaseFilter(Optional.of("foam-polidocanol"), OptionalInt.of(2022));
        String expected = text(CASES.stream()
                .filter(one -> one.year().orElseThrow() == 2022
                        && one.delivered().toString().contains("foam-polidocanol"))
                .map(TUNICA.pastCases()::toLine)
                .toList());
        assertTrue(!expected.isEmpty());
        assertEquals(expected, exported(foam));
    }

    @Test
    void check_counts() {
        importing(text(LINES));
        CaseCount count = base.check(CaseProgress.NONE);
        assertEquals(40, count.cases());
        assertEquals(40, count.invented());
        assertEquals(40, count.byYear().values().stream().mapToLong(n -> n).sum());
        assertEquals(
                count.segments(),
                count.byTechnique().values().stream().mapToLong(n -> n).sum());
    }

    @Test
    void baseThatIsDamaged_isNotAddedTo() throws IOException {
        importing(text(LINES));
        Path cases = folder.resolve("base").resolve(CaseBase.CASES);
        byte[] whole = Files.readAllBytes(cases);
        Files.write(cases, Arrays.copyOf(whole, whole.length - 10));
        byte[] damaged = Files.readAllBytes(cases);
        assertEquals(List.of("line 40"), lines(() -> base.add(List.of())));
        assertArrayEquals(damaged, Files.readAllBytes(cases), "what can be rescued is left as it is");
        assertTrue(lines(() -> base.check(CaseProgress.NONE)).contains("line 40"));
    }

    @Test
    void secondWriter_isKeptOut() {
        try (BaseLock only = BaseLock.of(folder.resolve("base"))) {
            assertTrue(only.file("x").toString().endsWith("x"));
            FaultyInput e = assertThrows(FaultyInput.class, () -> base.add(CASES));
            assertTrue(e.getMessage().contains("is being written by another program"));
        }
        base.add(CASES);
    }

    @Test
    void reader_keepsWhatItBeganWith_whileSomebodyWrites() {
        importing(text(LINES.subList(0, 30)));
        List<PastCase> read = new ArrayList<>();
        base.each(
                one -> {
                    if (read.isEmpty()) {
                        base.add(CASES.subList(30, 40));
                    }
                    read.add(one);
                },
                CaseProgress.NONE);
        assertEquals(CASES.subList(0, 30), read);
        assertEquals(text(LINES), exported(CaseFilter.ALL));
    }

    @Test
    void folderThatCannotBe_isNamed() throws IOException {
        Files.writeString(folder.resolve("file"), "no folder");
        CaseBase nowhere = TUNICA.pastCases().caseBase(folder.resolve("file"));
        assertTrue(assertThrows(FaultyInput.class, () -> nowhere.add(CASES))
                .getMessage()
                .contains("file"));
        assertThrows(FaultyInput.class, () -> base.each(one -> {}, CaseProgress.NONE));
        assertEquals(0, base.check(CaseProgress.NONE).cases(), "a base that is not there yet is an empty one");
    }

    @Test
    void progress_reachesTheEnd() throws IOException {
        List<Long> done = new ArrayList<>();
        Path file = Files.writeString(folder.resolve("cases"), text(LINES));
        base.importFrom(file, (doneBytes, allBytes, cases) -> {
            assertEquals(text(LINES).length(), allBytes);
            done.add(doneBytes);
        });
        assertEquals(text(LINES).length(), done.get(done.size() - 1));
    }

    private Imported importing(String text) {
        try {
            return base.importFrom(Files.writeString(folder.resolve("cases"), text), CaseProgress.NONE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String exported(CaseFilter filter) {
        StringBuilder out = new StringBuilder();
        base.export(filter, out, CaseProgress.NONE);
        return out.toString();
    }

    private List<String> names() {
        try (Stream<Path> files = Files.list(folder.resolve("base"))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(Runnable doing) {
        return assertThrows(FaultyInput.class, doing::run).faults().stream()
                .map(Fault::place)
                .toList();
    }

    private static String text(List<String> lines) {
        return lines.stream().map(line -> line + "\n").collect(Collectors.joining());
    }

    private static byte[] packed(String text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return bytes.toByteArray();
    }
}
