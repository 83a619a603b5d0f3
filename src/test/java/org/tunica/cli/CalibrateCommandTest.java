package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.casefile.FaultyInput;
import org.tunica.plan.Advice;

class CalibrateCommandTest {
    private static final String DEMO = "knowledge/demo/bench.csv";
    private static final String FILM = "heat.laser.film";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int calibrate(String... args) {
        String[] all = Stream.concat(Stream.of("calibrate"), Stream.of(args)).toArray(String[]::new);
        return Main.run(all, new PrintWriter(out), new PrintWriter(err));
    }

    @Test
    void documentationExample_reportAndProposal() throws IOException {
        Path proposal = folder.resolve("proposal.yaml");
        assertEquals(0, calibrate(DEMO, "--free", FILM, "--out", proposal.toString()), err::toString);
        String text = out.toString();
        assertTrue(text.startsWith("A proposal for governance, not for use"), text);
        assertTrue(text.replaceAll("\\s+", " ").contains(Advice.CAUTION), text);
        assertTrue(text.contains("29 rows, 29 different conditions, 58 depths"), text);
        assertTrue(text.contains("95 % interval") && text.contains("Condition of the problem"), text);
        assertTrue(text.contains("Char, a yes or no that is counted and not fitted"), text);
        assertTrue(text.lines().allMatch(line -> line.length() <= 100), text);
        assertTrue(Files.readString(proposal).contains("\n" + FILM + ":\n"));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(proposal), files.toList(), "nothing half written is left");
        }
    }

    @Test
    void constantsThatTradeOff_areNamed() {
        assertEquals(0, calibrate(DEMO, "--free", FILM + ",heat.laser.efficiency"));
        assertTrue(
                out.toString().contains(FILM + " and heat.laser.efficiency are not told apart (correlation 0.9"),
                out::toString);
    }

    @Test
    void fileThatIsThere_isLeftAsItIs() throws IOException {
        Path taken = Files.writeString(folder.resolve("taken.yaml"), "mine");
        refuses("exists already", DEMO, "--free", FILM, "--out", taken.toString());
        assertEquals("mine", Files.readString(taken));
        Path half = Files.writeString(folder.resolve("new.yaml.part"), "somebody's");
        assertEquals(
                2,
                calibrate(
                        DEMO,
                        "--free",
                        FILM,
                        "--out",
                        folder.resolve("new.yaml").toString()));
        assertTrue(err.toString().contains("left from an earlier attempt"), err::toString);
        assertEquals("somebody's", Files.readString(half));
    }

    @Test
    void nameTakenWhileFitting_isLeftAsItIs() throws IOException {
        Path path = folder.resolve("late.yaml");
        OutputFile file = OutputFile.fresh(path.toString());
        Files.writeString(path, "quicker");
        assertTrue(assertThrows(FaultyInput.class, () -> file.write(new byte[] {1}))
                .getMessage()
                .contains("exists already"));
        assertEquals("quicker", Files.readString(path));
        assertFalse(Files.exists(folder.resolve("late.yaml.part")));
    }

    @Test
    void failureWhileWriting_leavesNothingHalfWritten() throws IOException {
        Path path = folder.resolve("window.svg");
        OutputFile file = OutputFile.replacing(path.toString());
        Files.writeString(Files.createDirectory(path).resolve("somebody's"), "work");
        assertThrows(FaultyInput.class, () -> file.write(new byte[] {1}));
        assertFalse(Files.exists(folder.resolve("window.svg.part")));
    }

    @Test
    void refusals() {
        refuses("did you mean \"heat.laser.film\"", DEMO, "--free", "heat.laser.flim");
        refuses("there is no such file", folder.resolve("none.csv").toString());
        refuses(
                "there is no such folder",
                DEMO,
                "--out",
                folder.resolve("no/such.yaml").toString());
        refuses("there is no column", "README.md");
        refuses("--width must be 60 to 160 columns, is 59", DEMO, "--width", "59");
    }

    private void refuses(String says, String... args) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        assertEquals(2, calibrate(args), err::toString);
        assertEquals("", out.toString());
        assertTrue(err.toString().contains(says), err::toString);
        assertFalse(err.toString().contains("Exception"), err::toString);
    }
}
