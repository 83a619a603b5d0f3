package org.tunica.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A writing process is killed at a random moment, again and again, on the same data: what it had acknowledged is there, what
 * is there is whole, and the chain holds. A killed process is no power cut; that the disk has the data rests on the settings
 * of the databases.
 */
class KillStormTest {
    private static final long SEED = 20260302;
    private static final int MOST_ACKNOWLEDGED = 300;

    @TempDir
    private Path folder;

    private final Map<String, Long> acknowledged = new HashMap<>();

    @Test
    void fiveKills_loseNothing(TestReporter reporter) throws Exception {
        storm(Engine.SQLITE, 5, reporter);
    }

    @Tag("deep")
    @ParameterizedTest
    @EnumSource
    void aHundredKills_loseNothing(Engine engine, TestReporter reporter) throws Exception {
        storm(engine, 100, reporter);
    }

    private void storm(Engine engine, int rounds, TestReporter reporter)
            throws SQLException, IOException, InterruptedException {
        String place = engine.freshPlace(folder);
        Random random = new Random(SEED);
        for (int round = 0; round < rounds; round++) {
            // at the first rounds of a long storm the killing hits the making of the schema
            int moment = rounds > 5 && round < 10 ? 0 : 1 + random.nextInt(MOST_ACKNOWLEDGED);
            writeAndKill(place, "r" + round, moment, random);
            check(place, "r" + round);
        }
        long unacknowledged = check(place, "");
        long sum = acknowledged.values().stream().mapToLong(Long::longValue).sum();
        reporter.publishEntry(
                engine + ", " + rounds + " kills",
                sum + " acknowledged transactions, 0 lost, 0 half-written, " + unacknowledged
                        + " kept though not yet acknowledged");
        assertTrue(sum > rounds, "the storm was no storm: " + sum);
    }

    /** @param moment how many acknowledgements to wait for */
    private void writeAndKill(String place, String run, int moment, Random random)
            throws IOException, InterruptedException {
        Process process = start(place, run);
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertEquals("begins", lines.readLine());
            long aWhile = moment == 0 ? random.nextInt(1_500_000_000) : random.nextInt(3_000_000);
            List<String> read = new ArrayList<>();
            for (int i = 0; i < moment; i++) {
                read.add(lines.readLine());
            }
            for (long end = System.nanoTime() + aWhile; System.nanoTime() < end; ) {
                Thread.onSpinWait();
            }
            process.toHandle().destroyForcibly(); // the process itself would close what it still has to say
            process.waitFor();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                read.add(line);
            }
            read.forEach(this::acknowledge);
        }
    }

    private void acknowledge(String line) {
        String[] words = String.valueOf(line).split(" ");
        // the last line may be cut by the kill: then its number is of an earlier one, which is as true
        if (words.length == 2 && !words[1].isEmpty()) {
            acknowledged.merge(words[0], Long.valueOf(words[1]), Math::max);
        }
    }

    private static Process start(String place, String run) throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx128m",
                        "-cp",
                        classPath,
                        StormWriter.class.getName(),
                        place,
                        run)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /**
     * Checks the chain and all that is kept against it, and the runs named against what they acknowledged.
     *
     * @param run how the names of those runs begin
     * @return how many transactions are there beyond those acknowledged
     */
    private long check(String place, String run) {
        try (Store store = Store.open(place, Clock.systemUTC())) {
            Verification found = store.audit().verify();
            assertEquals(List.of(), found.faults());
            assertEquals(found.auditRows(), found.keptRows());
            acknowledged.forEach((ref, versions) -> {
                if (ref.startsWith(run)) {
                    check(store, ref, versions);
                }
            });
            return found.keptRows() / 2
                    - acknowledged.values().stream().mapToLong(Long::longValue).sum();
        }
    }

    private static void check(Store store, String ref, long versions) {
        List<KeptCase> history = store.cases().history(ref);
        List<KeptDocument> advice = store.documents().of(ref, DocumentKind.ADVICE);
        assertTrue(
                history.size() >= versions, () -> ref + ": acknowledged " + versions + ", there are " + history.size());
        assertEquals(history.size(), advice.size(), () -> ref + " was half-written");
    }
}
