package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Bundle;
import org.tunica.pastcases.PastCase;
import org.tunica.store.Actor;
import org.tunica.store.Engine;
import org.tunica.store.Store;

/** One replay of the past cases of a store by several programs, some of which die: the same bytes as by one. */
class SharedReplayTest {
    private static final Actor ANNA = new Actor("anna");
    private static final int CASES = 700;

    /** The demonstration cases are one part, 200 past cases another. */
    private static final int PARTS = 5;

    @TempDir
    private static Path folder;

    private static String place;
    private static String whole;

    /** Cases that ask nothing of the heat model, so that many can be replayed. */
    @BeforeAll
    static void fill() throws Exception {
        place = Engine.POSTGRESQL.freshPlace(folder);
        Tunica shipped = Tunica.shipped();
        try (Store store = Store.open(place, Clock.systemUTC())) {
            Iterator<PastCase> cases = LongStream.range(0, Long.MAX_VALUE)
                    .mapToObj(shipped.pastCases().inventedLibrary(8)::at)
                    .filter(past -> asksNoHeat(shipped, past.caseFile()))
                    .limit(CASES)
                    .iterator();
            store.together(() -> {
                while (cases.hasNext()) {
                    PastCase past = cases.next();
                    store.pastCases()
                            .bringIn(ANNA, past.id(), shipped.pastCases().toLine(past));
                }
                return "";
            });
        }
        for (var text : Bundle.shipped().texts().entrySet()) {
            Path file = folder.resolve("draft").resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(
                    file,
                    text.getKey().endsWith("3-cautions/arteries.rule")
                            ? text.getValue().replaceFirst("then caution strongly", "then caution slightly")
                            : text.getValue());
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        assertEquals(0, Main.run(replay(), new PrintWriter(out), new PrintWriter(err)), err::toString);
        whole = out.toString();
    }

    private static boolean asksNoHeat(Tunica shipped, CaseFile caseFile) {
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .allMatch(segment ->
                        shipped.physics().heatQuestions(caseFile, segment).isEmpty());
    }

    private static String[] replay(String... more) {
        List<String> all = new ArrayList<>(List.of(
                "replay", "--draft", folder.resolve("draft").toString(), "--kept", place, "--json", "--threads", "1"));
        all.addAll(List.of(more));
        return all.toArray(new String[0]);
    }

    private static Process program(Path out) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.tunica.cli.Main"));
        command.addAll(List.of(replay("--shared", place)));
        File log = folder.resolve("log").toFile();
        return new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(ProcessBuilder.Redirect.appendTo(log))
                .start();
    }

    private static long count(String condition) throws SQLException {
        try (Connection connection = DriverManager.getConnection(place);
                Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery("select count(*) from replay_parts where " + condition)) {
            found.next();
            return found.getLong(1);
        }
    }

    private static void sameBytes(Process process, Path out) throws Exception {
        assertEquals(0, process.waitFor(), () -> read(folder.resolve("log")));
        assertEquals(whole, Files.readString(out));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            return e.toString();
        }
    }

    @Test
    void oneKilledAtItsWork_theOthersComeToTheSameBytesAsOneAlone() throws Exception {
        Engine.POSTGRESQL.behindItsBack(place, "delete from replay_parts");
        Process killed = program(folder.resolve("killed"));
        while (count("result = ''") == 0) {
            assertTrue(killed.isAlive(), () -> read(folder.resolve("log")));
            Thread.onSpinWait();
        }
        killed.destroyForcibly().waitFor();
        assertNotEquals(0, count("result = ''"), "it was at a part when it died");
        // as if its quarter of a minute were over
        Engine.POSTGRESQL.behindItsBack(place, "update replay_parts set until_ms = 0 where result = ''");
        Process first = program(folder.resolve("first"));
        Process second = program(folder.resolve("second"));
        sameBytes(first, folder.resolve("first"));
        sameBytes(second, folder.resolve("second"));
        assertEquals(PARTS, count("result <> ''"));
        assertEquals(PARTS, count("1 = 1"));
    }

    /** So many rounds by -Dtunica.rounds=, usually 20; the lease of a dead one runs out by itself. */
    @Test
    @Tag("deep")
    void killedAtAnyMoment_timeAndAgain() throws Exception {
        Random random = new Random(29);
        for (int round = 0; round < Integer.getInteger("tunica.rounds", 20); round++) {
            Engine.POSTGRESQL.behindItsBack(place, "delete from replay_parts");
            Process killed = program(folder.resolve("killed"));
            Process stays = program(folder.resolve("stays"));
            Thread.sleep(500 + random.nextInt(6_000));
            killed.destroyForcibly().waitFor();
            sameBytes(stays, folder.resolve("stays"));
            assertEquals(PARTS, count("result <> ''"));
            assertEquals(PARTS, count("1 = 1"));
        }
    }
}
