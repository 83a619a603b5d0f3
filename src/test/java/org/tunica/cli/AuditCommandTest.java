package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;

/** The command over a small invented base. */
class AuditCommandTest {
    @TempDir
    static Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeAll
    static void base() {
        Tunica tunica = Tunica.shipped();
        tunica.pastCases()
                .caseBase(folder)
                .add(tunica.pastCases().inventedLibrary(3).cases(150));
    }

    @Test
    void text_saysFirstThatItIsInvented_andEndsWithHowToReadIt() {
        assertEquals(0, run("audit", "--cases", folder.toString(), "--width", "100"), err::toString);
        assertTrue(out.toString().startsWith("INVENTED. Outcome audit, all sites, all techniques, all years\n"));
        assertTrue(out.toString().contains("At a glance, at one year"));
        assertTrue(out.toString().contains("Nobody drew lots here"));
        assertTrue(out.toString().lines().allMatch(line -> line.length() <= 100), "no line is too wide");
        assertFalse(out.toString().contains("p-"), "no past case is named");
    }

    @Test
    void json_isOfItsFormat_andTheSameEachTime() {
        assertEquals(0, run("audit", "--cases", folder.toString(), "--from", "2020", "--json"), err::toString);
        String first = out.toString();
        assertTrue(first.startsWith("{\n  \"format\" : \"tunica-audit/1\""), () -> first.substring(0, 60));
        assertTrue(first.contains("\"fromYear\" : 2020"));
        out.getBuffer().setLength(0);
        run("audit", "--cases", folder.toString(), "--from", "2020", "--json");
        assertEquals(first, out.toString());
    }

    @Test
    void files_areWrittenAndNothingIsPrinted() throws IOException {
        Path page = folder.resolve("audit.html");
        Path charts = Files.createDirectory(folder.resolve("charts"));
        assertEquals(
                0,
                run(
                        "audit",
                        "--cases",
                        folder.toString(),
                        "--technique",
                        "foam-polidocanol",
                        "--html",
                        page.toString(),
                        "--svg",
                        charts.toString()),
                err::toString);
        assertTrue(Files.readString(page).contains("<svg"));
        assertTrue(Files.exists(charts.resolve("foam-polidocanol-adhesive-open-stump-curve.svg")));
        assertEquals("", out.toString());
    }

    @Test
    void whatCannotBeAsked_isSaidBeforeAnythingIsRead() {
        assertEquals(2, run("audit", "--cases", "nowhere", "--technique", "lazer-1470-radial"));
        assertTrue(err.toString().contains("did you mean \"laser-1470-radial\"?"), err::toString);
        assertEquals(2, run("audit", "--cases", folder.resolve("nowhere").toString()));
        assertTrue(err.toString().contains("holds no cases.jsonl"), err::toString);
    }

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}
