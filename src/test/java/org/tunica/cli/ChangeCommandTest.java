package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.plan.Advice;

/** A change from its beginning until it is handed in, and the rules in use, as somebody at the command line does it. */
class ChangeCommandTest {
    private static final String DISTANCES = "knowledge/limits/distances.yaml";

    @TempDir
    private Path folder;

    private String out = "";
    private String err = "";

    @Test
    void aChange_goesFromStartToReview() throws Exception {
        String data = folder.resolve("data").toString();
        String copy = folder.resolve("copy").toString();
        assertEquals(0, run("people", "add", "anna", "--post", "rule-author", "--data", data));
        assertEquals(0, start(data, copy), err);
        assertTrue(out.contains("none is in force here"), out);
        assertEquals(2, start(data, copy), "a folder that is there");

        assertEquals(2, run("change", "check", copy));
        assertTrue(out.contains("BAR    One change record says who, why and what"), out);
        assertEquals(2, run("change", "submit", copy, "--data", data));
        assertTrue(err.contains("nothing differs"), err);

        widenTheGap();
        assertEquals(0, run("change", "reason", copy, "a burn at five and a half millimetres, invented"));
        assertEquals(0, run("change", "show", copy, "--width", "100"));
        assertTrue(out.contains("value: was 5 mm, is 6 mm"), out);
        assertEquals(0, run("change", "show", copy, "--lines"));
        assertTrue(out.contains("-  value: 5\n+  value: 6\n"), out);
        assertEquals(0, run("change", "check", copy), out);
        assertTrue(out.replaceAll("\\s+", " ").contains(Advice.CAUTION), out);

        assertEquals(0, run("change", "check", copy, "--json"));
        String document = out;
        assertEquals(0, run("change", "submit", copy, "--data", data), err);
        String number = out.substring("Change ".length(), "Change ".length() + 4);
        assertEquals(0, run("change", "read", number, "--json", "--data", data));
        assertEquals(document, out);
        assertEquals(0, run("change", "take", number, folder.resolve("taken").toString(), "--data", data), err);
        assertEquals(
                Files.readString(Path.of(copy).resolve(DISTANCES)),
                Files.readString(folder.resolve("taken").resolve(DISTANCES)));
        assertEquals(0, run("change", "withdraw", number, "--because", "a better source", "--data", data));
        assertEquals(0, run("change", "list", "--data", data));
        assertTrue(out.contains("Change " + number + ": withdrawn, by anna"), out);

        String[] without = {"change", "start", "--title", "x", "--author", "anna", "--initials", "AK", "--data", data};
        assertEquals(0, run(without), err);
        String other = out.substring("Change ".length(), "Change ".length() + 4);
        assertNotEquals(number, other, "a number once handed in is taken");
        assertTrue(Files.isRegularFile(Path.of(data, "changes", other, "change.json")), out);
    }

    @Test
    void aLook_tellsWhatThereIsEvenWhenThereIsLittle() {
        String data = folder.resolve("data").toString();
        assertEquals(0, run("people", "add", "stefan", "--post", "safety-officer", "--data", data));
        assertEquals(0, run("watch", "--data", data, "--width", "100"), err);
        assertTrue(out.contains("There are too few cases to tell."), out);
        assertTrue(out.contains("heat.skin-gap.min, 5 mm (S-0010), feeds CAU-076, EXC-007, FIN-012"), out);
        assertEquals(2, run("watch", "--days", "0", "--data", data));
        assertTrue(err.contains("must be 1 to 3650 days, is 0"), err);
        assertEquals(0, run("feedback", "list", "--data", data));
        assertEquals("None.\n", out);
        assertEquals(
                2,
                run("feedback", "judge", "card-1", "appropriate", "--by", "stefan", "--because", "x", "--data", data));
        assertTrue(err.contains("nobody reported what became of it"), err);
    }

    private int start(String data, String copy) {
        return run(
                "change",
                "start",
                copy,
                "--title",
                "A wider gap to the skin",
                "--author",
                "anna",
                "--initials",
                "AK",
                "--features",
                "features",
                "--data",
                data);
    }

    private void widenTheGap() throws Exception {
        Path file = folder.resolve("copy").resolve(DISTANCES);
        Path records = folder.resolve("copy").resolve("change.json");
        String json = Files.readString(records);
        String number = json.replaceAll("(?s).*\"number\" : \"(\\d{4})\".*", "$1");
        String text = Files.readString(file);
        Files.writeString(
                file,
                text.replaceFirst("value: 5\n", "value: 6\n")
                        .replaceFirst("change: \"0003\"", "change: \"" + number + "\""));
    }

    private int run(String... args) {
        StringWriter written = new StringWriter();
        StringWriter failed = new StringWriter();
        int code = Main.run(args, new PrintWriter(written), new PrintWriter(failed));
        out = written.toString();
        err = failed.toString();
        return code;
    }
}
