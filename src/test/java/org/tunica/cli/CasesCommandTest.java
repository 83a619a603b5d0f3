package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.plan.Advice;

class CasesCommandTest extends AtTheCommandLine {
    @TempDir
    private Path folder;

    @Test
    void invent_export_check_import_areTheSameCases() throws IOException {
        run("cases", "invent", "--count", "30", "--seed", "4", "--cases", at("a"));
        assertEquals(0, code, err);
        assertTrue(out.startsWith("INVENTED: 30 cases of seed 4 that nobody ever was"), out);
        assertTrue(out.contains(Advice.CAUTION));
        assertEquals("", err, "no bar where nobody watches");
        run("cases", "export", "--cases", at("a"), "--to", at("a.jsonl"));
        assertEquals("30 past cases written to " + at("a.jsonl") + "\n", out);
        run("cases", "import", at("a.jsonl"), "--cases", at("b"));
        assertTrue(out.startsWith("30 past cases of " + at("a.jsonl") + " brought into " + at("b")), out);
        run("cases", "export", "--cases", at("b"));
        assertEquals(Files.readString(folder.resolve("a.jsonl")), out);
        run("cases", "check", at("a.jsonl"));
        String file = out;
        run("cases", "check", "--cases", at("b"));
        assertEquals(file.replace(at("a.jsonl"), at("b")), out);
        assertTrue(out.contains("30 past cases, every line sound; all of them are INVENTED and prove nothing"), out);
    }

    @Test
    void import_ofAFaultyFile_tellsTheLineAndBringsNothing() throws IOException {
        run("cases", "invent", "--count", "3", "--cases", at("a"));
        run("cases", "export", "--cases", at("a"), "--to", at("a.jsonl"));
        Files.writeString(
                folder.resolve("a.jsonl"),
                Files.readString(folder.resolve("a.jsonl")).replaceFirst("site-inv", "site of "));
        run("cases", "import", at("a.jsonl"), "--cases", at("b"));
        assertEquals(2, code);
        assertTrue(err.contains("line 1, $.site: must be \"site-\""), err);
        assertTrue(Files.notExists(folder.resolve("b").resolve("cases.jsonl")));
    }

    @Test
    void export_keepsToAFilter_andKnowsTechniques() {
        run("cases", "invent", "--count", "60", "--cases", at("a"));
        run("cases", "export", "--cases", at("a"), "--technique", "adhesive");
        assertTrue(
                out.lines().count() > 1 && out.lines().allMatch(line -> line.contains("\"technique\":\"adhesive\"")));
        run("cases", "export", "--cases", at("a"), "--technique", "adhesiv");
        assertEquals(2, code);
        assertTrue(err.contains("there is no such technique; did you mean \"adhesive\"?"), err);
    }

    @Test
    void wrongUse() {
        run("cases", "invent", "--count", "0", "--cases", at("a"));
        assertEquals(2, code);
        run("cases", "check");
        assertEquals(2, code);
        run("cases", "export", "--cases", at("nothing"));
        assertEquals(2, code);
        assertTrue(err.contains("holds no cases.jsonl"), err);
    }

    @Test
    void bar_growsOnOneLine() {
        StringWriter drawn = new StringWriter();
        try (ProgressBar bar = ProgressBar.always("importing", new PrintWriter(drawn))) {
            bar.at(0, 100, 0);
            bar.at(50, 100, 1_000);
            bar.at(50, 100, 1_001);
            bar.at(100, 100, 2_000);
        }
        assertEquals(3, drawn.toString().split("\r").length - 1, drawn.toString());
        assertTrue(drawn.toString().contains("importing [####################                    ] 1,000 cases"));
        assertTrue(drawn.toString().endsWith("] 2,000 cases" + System.lineSeparator()));
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }
}
