package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.plan.Advice;

/** From a finished case of an invented person to a base in which nobody finds her. */
class RetainAndReleaseTest {
    private static final String DELIVERED = "knowledge/demo/delivered/both-legs-many-segments.json";
    private static final String FOLLOW_UP = "knowledge/demo/follow-up/both-legs-many-segments.json";
    private static final String NOTE =
            "Mrs Rose Thornbury, born 3.4.1960, tel. 0555 123456, slept well. Fibre SN 48213-A";
    private static final List<String> PLANTED = List.of(
            "Rose",
            "Thornbury",
            "3.4.1960",
            "1960",
            "0555",
            "123456",
            "48213",
            "larkspur",
            "2026-03-09",
            "\"AK\"",
            "\"LB\"");
    private static final Pattern ID = Pattern.compile("p-[0-9a-f]{24}");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");

    @TempDir
    private static Path folder;

    private static String plan = "";

    private final StringBuilder printed = new StringBuilder();
    private String out = "";
    private String err = "";

    @BeforeAll
    static void planned() throws IOException {
        Tunica tunica = Tunica.shipped();
        Path demo = Path.of("knowledge/demo/both-legs-many-segments.json");
        plan = Files.writeString(
                        folder.resolve("plan.json"),
                        tunica.toJson(tunica.plan(tunica.readCase("demo", Files.readAllBytes(demo)))))
                .toString();
    }

    @Test
    void fiveOfAKind_areLookedAtAndReleased_andNothingPrintedOrKeptNamesAnybody() throws IOException {
        Path base = folder.resolve("base");
        List<String> digests = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            assertEquals(0, retain(base), err);
            String id = first(ID, out);
            assertEquals(0, run("cases", "waiting", id, "--cases", base.toString()), err);
            digests.add(first(DIGEST, out));
            assertTrue(out.contains(Advice.CAUTION.substring(0, 40)), out);
        }
        run("cases", "waiting", "--cases", base.toString());
        assertTrue(out.contains("5 cases wait for release"), out);
        assertEquals(2, run("cases", "release", "--cases", base.toString(), "--digest", digests.get(0)));
        assertTrue(err.contains("is held back: it waits for 4 more with invented, age 50-59 years"), err);
        assertFalse(Files.exists(base.resolve("cases.jsonl")), "nothing half released");
        assertEquals(0, release(base, digests), err);
        assertEquals(5, Files.readAllLines(base.resolve("cases.jsonl")).size());
        assertEquals(List.of(), Files.readAllLines(base.resolve("waiting.jsonl")));
        assertEquals(0, run("cases", "report", "--cases", base.toString()), err);
        assertTrue(out.contains("k = 5 (asked: 5)"), out);
        assertEquals(0, run("cases", "report", "--json", "--cases", base.toString()), err);
        assertTrue(out.contains("\"format\" : \"tunica-anonymity/1\""), out);
        printed.append(Files.readString(base.resolve("cases.jsonl")));
        // what is drawn by lot or reckoned may hold any digits
        String words = printed.toString().replaceAll(ID + "|" + DIGEST, "");
        PLANTED.forEach(one -> assertFalse(words.contains(one), one));
    }

    @Test
    void changedLine_isNotTheOneThatWasSeen() throws IOException {
        Path base = folder.resolve("changed");
        retain(base);
        String id = first(ID, out);
        run("cases", "waiting", id, "--cases", base.toString());
        String digest = first(DIGEST, out);
        assertEquals(0, run("cases", "coarsen", id, "--less", "age,year", "--cases", base.toString()), err);
        assertEquals(2, run("cases", "release", "--cases", base.toString(), "--digest", digest));
        assertTrue(err.contains("no waiting line has"), err);
        run("cases", "waiting", id, "--cases", base.toString());
        assertTrue(out.contains("\"ageBandYears\":\"50-69\"") && !out.contains("\"year\""), out);
    }

    @Test
    void handChangedLine_isRefusedWithItsNumberAndWithoutItsText() throws IOException {
        Path base = folder.resolve("by-hand");
        retain(base);
        Path waiting = base.resolve("waiting.jsonl");
        Files.writeString(waiting, Files.readString(waiting).replace("slept well", "slept well, Rose Thornbury"));
        assertEquals(2, run("cases", "waiting", "--cases", base.toString()));
        assertTrue(err.contains("waiting.jsonl, line 1") && !err.contains("Thornbury"), err);
    }

    private int retain(Path base) {
        return run(
                "cases",
                "retain",
                plan,
                DELIVERED,
                FOLLOW_UP,
                "--cases",
                base.toString(),
                "--site",
                "site-a1",
                "--invented",
                "--note",
                NOTE);
    }

    private int release(Path base, List<String> digests) {
        List<String> args = new ArrayList<>(List.of("cases", "release", "--cases", base.toString()));
        digests.forEach(digest -> args.addAll(List.of("--digest", digest)));
        return run(args.toArray(String[]::new));
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        return Optional.of(matcher).filter(Matcher::find).map(Matcher::group).orElse("none in " + text);
    }

    private int run(String... args) {
        StringWriter outs = new StringWriter();
        StringWriter errs = new StringWriter();
        int code = Main.run(args, new PrintWriter(outs), new PrintWriter(errs));
        out = outs.toString();
        err = errs.toString();
        printed.append(out).append(err);
        return code;
    }
}
