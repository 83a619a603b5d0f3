package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.Tunica;

/** Whenever a program dies that adds to a base, the base is the old one or the new one, whole, and can be added to again. */
class CaseBaseCrashTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final List<PastCase> OLD =
            TUNICA.pastCases().inventedLibrary(5).cases(20).toList();
    private static final List<PastCase> NEW =
            TUNICA.pastCases().inventedLibrary(6).cases(20).toList();

    @TempDir
    private Path folder;

    /** A stage at which the program stops with an error. */
    @ParameterizedTest
    @EnumSource(NewBase.Stage.class)
    void errorAtAStage_leavesTheOldBaseOrTheNewOne(NewBase.Stage last) {
        base().add(OLD);
        String old = whole();
        CaseBase failing = new CaseBase(folder, TUNICA.knowledge(), TUNICA.pastCases()::toLine, stage -> {
            if (stage == last) {
                throw new UncheckedIOException(new IOException("no more paper"));
            }
        });
        assertThrows(UncheckedIOException.class, () -> failing.add(NEW));
        assertEquals(
                last == NewBase.Stage.NAMED ? 40 : 20,
                base().check(CaseProgress.NONE).cases());
        assertTrue(whole().startsWith(old));
        assertTrue(Files.notExists(folder.resolve("cases.jsonl.part")), "nothing half-written is left");
        addedAgain(last == NewBase.Stage.NAMED);
    }

    /** A stage at which the program is gone at once, with nothing cleaned up: another Java program that halts itself. */
    @ParameterizedTest
    @EnumSource(
            value = NewBase.Stage.class,
            names = {"GROWN", "NAMED"})
    void deathAtAStage(NewBase.Stage last) throws Exception {
        dies(last);
    }

    @ParameterizedTest
    @EnumSource(NewBase.Stage.class)
    @Tag("deep")
    void deathAtAnyStage(NewBase.Stage last) throws Exception {
        dies(last);
    }

    private void dies(NewBase.Stage last) throws Exception {
        base().add(OLD);
        String old = whole();
        assertEquals(Adder.HALTED, started(last.name()).waitFor());
        assertTrue(whole().startsWith(old));
        assertEquals(
                last == NewBase.Stage.NAMED ? 40 : 20,
                base().check(CaseProgress.NONE).cases());
        addedAgain(last == NewBase.Stage.NAMED);
    }

    /** Killed from outside at any moment, 40 times. */
    @Test
    @Tag("deep")
    void killedAtAnyMoment() throws Exception {
        base().add(OLD);
        String old = whole();
        Random moments = new Random(20261127);
        for (int i = 0; i < 40; i++) {
            Process adder = started("for ever");
            adder.waitFor(500 + moments.nextInt(2_000), TimeUnit.MILLISECONDS);
            adder.destroyForcibly().waitFor();
            assertTrue(whole().startsWith(old));
            long cases = base().check(CaseProgress.NONE).cases();
            assertEquals(0, cases % 20, "only whole sets of 20");
            old = whole();
        }
    }

    private void addedAgain(boolean thereAlready) {
        if (!thereAlready) {
            base().add(NEW);
        }
        assertEquals(40, base().check(CaseProgress.NONE).cases());
    }

    private CaseBase base() {
        return TUNICA.pastCases().caseBase(folder);
    }

    private String whole() {
        try {
            return Files.readString(folder.resolve(CaseBase.CASES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Process started(String stage) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Adder.class.getName(),
                        folder.toString(),
                        stage)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
    }

    /** Adds to a base and dies at a stage, or goes on adding. */
    static final class Adder {
        static final int HALTED = 77;

        private Adder() {}

        public static void main(String[] args) {
            CaseBase base = new CaseBase(Path.of(args[0]), TUNICA.knowledge(), TUNICA.pastCases()::toLine, stage -> {
                if (stage.name().equals(args[1])) {
                    Runtime.getRuntime().halt(HALTED);
                }
            });
            base.add(NEW);
            for (long seed = ProcessHandle.current().pid(); ; seed++) {
                base.add(TUNICA.pastCases().inventedLibrary(seed * 1_000_003).cases(20));
            }
        }
    }
}
