package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.CaseTree;
import org.tunica.knowledge.Bundle;
import org.tunica.plan.Advice;
import org.tunica.store.Store;

class ReplayCommandTest extends AtTheCommandLine {
    private static final int DEMO = CaseTree.demoFiles().size();

    @TempDir
    private static Path drafts;

    @TempDir
    private Path folder;

    /** The arteries of every demonstration case are sound, so no search for a heat setting holds these tests up. */
    @BeforeAll
    static void writeADraft() throws IOException {
        for (var text : Bundle.shipped().texts().entrySet()) {
            Path file = drafts.resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    text.getKey().endsWith("3-cautions/arteries.rule")
                            ? text.getValue().replaceFirst("then caution strongly", "then caution slightly")
                            : text.getValue());
        }
    }

    private void replay(String... more) {
        String[] args = new String[more.length + 5];
        System.arraycopy(new String[] {"replay", "--draft", drafts.toString(), "--width", "100"}, 0, args, 0, 5);
        System.arraycopy(more, 0, args, 5, more.length);
        run(args);
    }

    @Test
    void demo_comesOutTheSameAndSaysSo() {
        replay("--demo");
        assertEquals(0, code, err);
        assertTrue(out.startsWith("DRAFT. Replay of two releases, 0.1.0 (draft, "), out);
        assertTrue(out.contains(Advice.CAUTION.substring(0, 40)), out);
        assertTrue(out.contains("Every segment of every case comes out the same."), out);
        assertTrue(out.contains(DEMO + " demonstration cases, made up"), out);
        assertEquals("", err, "no bar where nobody watches");
    }

    @Test
    void invented_asJson_isTheSameHoweverItRan() {
        replay("--invented", "2:5", "--json");
        assertEquals(0, code, err);
        assertTrue(out.contains("\"format\" : \"tunica-replay/1\""), out);
        assertTrue(out.contains("\"digest\" : \"sha256:"), out);
        assertTrue(out.contains("\"casesCount\" : " + (DEMO + 2)), out);
        String once = out;
        replay("--invented", "2:5", "--json", "--threads", "1", "--work", folder.toString());
        assertEquals(once, out);
        replay("--invented", "2:5", "--json", "--work", folder.toString());
        assertEquals(once, out);
    }

    @Test
    void page_isWrittenForBrowserAndPaper() throws IOException {
        replay(
                "--demo",
                "--html",
                folder.resolve("a.html").toString(),
                "--pdf",
                folder.resolve("a.pdf").toString());
        assertEquals(0, code, err);
        assertTrue(Files.readString(folder.resolve("a.html")).contains("Replay of two releases"));
        byte[] pdf = Files.readAllBytes(folder.resolve("a.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        assertEquals("", out);
    }

    @Test
    void cases_mustBeSaid() {
        replay();
        assertEquals(2, code);
        assertTrue(err.contains("Say which cases: --cases, --kept, --invented or --demo"), err);
    }

    @Test
    void wrongWords_areRefusedInOneLine() {
        replay("--invented", "many");
        assertEquals(2, code);
        assertTrue(err.contains("must be a number of cases and perhaps a seed, such as 1000 or 1000:7"), err);
        replay("--cases", folder.resolve("nothing").toString());
        assertEquals(2, code);
        assertTrue(err.contains("holds no cases.jsonl"), err);
        replay("--demo", "--threads", "0");
        assertEquals(2, code);
        run("replay", "--draft", folder.resolve("none").toString(), "--demo");
        assertEquals(2, code);
        assertTrue(err.contains("there is no such folder or archive"), err);
    }

    @Test
    void aFolder_cannotBeShared() {
        Store.open(folder.toString(), Clock.systemUTC()).close();
        replay("--demo", "--shared", folder.toString());
        assertEquals(2, code);
        assertTrue(err.contains("--shared: a folder is for one program"), err);
    }
}
