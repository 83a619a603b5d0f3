package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.Tunica;
import org.tunica.store.AuditRow;
import org.tunica.store.Engine;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** From finished cases of invented people to the past cases of a server, and from one server to another. */
class PastCasesAtServerTest extends AtTheCommandLine {
    private static final String DEMO = "knowledge/demo/both-legs-many-segments.json";
    private static final Path DELIVERED = Path.of("knowledge/demo/delivered/both-legs-many-segments.json");
    private static final Path FOLLOW_UP = Path.of("knowledge/demo/follow-up/both-legs-many-segments.json");
    private static final Pattern ID = Pattern.compile("p-[0-9a-f]{24}");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final int K = 5;

    @TempDir
    private static Path folder;

    private static String plan = "";

    @BeforeAll
    static void planned() throws IOException {
        Tunica tunica = Tunica.shipped();
        plan = Files.writeString(
                        folder.resolve("plan.json"),
                        tunica.toJson(tunica.plan(tunica.readCase("demo", Files.readAllBytes(Path.of(DEMO))))))
                .toString();
    }

    @ParameterizedTest
    @EnumSource
    void finishedCases_waitAreReleasedSearchedAuditedAndCarriedOn(Engine engine) throws Exception {
        String place = fresh(engine);
        List<String> digests = new ArrayList<>();
        for (int number = 0; number < K; number++) {
            retain(place, delivered(number));
            assertEquals(0, code, err);
            String id = first(ID, out);
            run("cases", "waiting", id, "--data", place);
            digests.add(first(DIGEST, out));
        }
        retain(place, delivered(0));
        assertEquals(2, code);
        assertTrue(err.contains("say the same as p-") && err.contains("which waits already"), err);
        run("similar", DEMO, "--data", place);
        assertTrue(out.contains("0 past cases released here."), out);

        run("cases", "release", "--data", place, "--digest", digests.get(0));
        assertEquals(2, code);
        assertTrue(err.contains("is held back: it waits for 4 more with invented, age 50-59 years"), err);
        release(place, digests);
        assertEquals(0, code, err);
        assertTrue(out.contains("5 cases released"), out);
        run("cases", "waiting", "--data", place);
        assertTrue(out.contains("No case waits"), out);
        retain(place, delivered(1));
        assertTrue(err.contains("which is released"), err);

        run("similar", DEMO, "--data", place, "--segment", "L1");
        assertTrue(out.contains("5 past cases released here."), out);
        run("audit", "--data", place);
        assertTrue(out.contains("Treated segments                  " + segments(place)), out);
        run("cases", "report", "--data", place);
        assertTrue(out.contains("k = 5 (asked: 5)"), out);
        assertEquals(
                List.of("past-case-released", "past-case-offered"),
                acts(place).stream()
                        .distinct()
                        .filter(act -> act.startsWith("past-case"))
                        .toList());
        carriedOn(engine, place);
    }

    /** What one server released another takes in: all of it, once, and with the same results. */
    private void carriedOn(Engine engine, String place) throws Exception {
        Path file = folder.resolve("carried-" + engine + ".jsonl");
        run("cases", "export", "--data", place, "--to", file.toString());
        assertTrue(out.contains("5 past cases written"), out + err);
        String other = fresh(engine == Engine.SQLITE ? Engine.POSTGRESQL : Engine.SQLITE);
        run("cases", "import", file.toString(), "--data", other, "--who", "wren");
        assertTrue(out.contains("5 past cases of"), out + err);
        run("cases", "import", file.toString(), "--data", other);
        assertTrue(out.contains("0 past cases of"), out + err);
        run("audit", "--data", place, "--json");
        String here = out;
        run("audit", "--data", other, "--json");
        assertEquals(here, out);
        assertEquals(
                K, acts(other).stream().filter("past-case-brought-in"::equals).count());

        String changed = Files.readString(file).replaceFirst("\"site\":\"site-a1\"", "\"site\":\"site-b1\"");
        Path faulty = Files.writeString(folder.resolve("changed-" + engine + ".jsonl"), changed + "{}\n");
        run("cases", "import", faulty.toString(), "--data", fresh(engine));
        assertEquals(2, code);
        assertTrue(err.contains("line 6"), err);
        run("cases", "import", Files.writeString(faulty, changed).toString(), "--data", other);
        assertEquals(2, code);
        assertTrue(err.contains("is here already with other words, or was: released"), err);
        assertEquals(
                K, acts(other).stream().filter("past-case-brought-in"::equals).count());
    }

    @ParameterizedTest
    @EnumSource
    void lessTold_hasToBeLookedAtAgain(Engine engine) throws Exception {
        String place = fresh(engine);
        retain(place, delivered(0));
        String id = first(ID, out);
        run("cases", "waiting", id, "--data", place);
        String digest = first(DIGEST, out);
        run("cases", "coarsen", id, "--less", "age,year", "--data", place);
        assertEquals(0, code, err);
        run("cases", "release", "--data", place, "--digest", digest);
        assertTrue(code == 2 && err.contains("no waiting line has"), err);
        run("cases", "waiting", id, "--data", place);
        assertTrue(out.contains("\"ageBandYears\":\"50-69\"") && !out.contains("\"year\""), out);
        assertTrue(out.contains("--data") || out.contains(first(DIGEST, out)), out);
    }

    /** A record of delivery that differs in one measured number, as those of several people do. */
    private static Path delivered(int number) throws IOException {
        String other = Files.readString(DELIVERED)
                .replace("\"closedLengthCm\": 38,", "\"closedLengthCm\": " + (30 + number) + ",");
        return Files.writeString(folder.resolve("delivered-" + number + ".json"), other);
    }

    private static String fresh(Engine engine) throws Exception {
        String place = engine.freshPlace(folder);
        Store.open(place, Clock.systemUTC()).close();
        return place;
    }

    private void retain(String place, Path delivered) {
        run(
                "cases",
                "retain",
                plan,
                delivered.toString(),
                FOLLOW_UP.toString(),
                "--data",
                place,
                "--site",
                "site-a1",
                "--invented");
    }

    private void release(String place, List<String> digests) {
        List<String> args = new ArrayList<>(List.of("cases", "release", "--data", place));
        digests.forEach(digest -> args.addAll(List.of("--digest", digest)));
        run(args.toArray(String[]::new));
    }

    private static int segments(String place) {
        try (Store store = Store.existing(place, Clock.systemUTC())) {
            return store.pastCases().since(0, K).stream()
                    .map(kept -> kept.line().split("\"technique\":", -1).length - 1)
                    .collect(Collectors.summingInt(Integer::intValue));
        }
    }

    /** What the trail tells, the last first. */
    private static List<String> acts(String place) {
        try (Store store = Store.existing(place, Clock.systemUTC())) {
            assertEquals(List.of(), store.audit().verify().faults());
            return store.audit().newest(Page.newest(100)).stream()
                    .map(AuditRow::act)
                    .toList();
        }
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), text);
        assertFalse(matcher.group().isEmpty());
        return matcher.group();
    }
}
