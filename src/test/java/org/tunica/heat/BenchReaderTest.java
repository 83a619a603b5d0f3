package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.FaultyInput;

class BenchReaderTest {
    private static final Calibration CALIBRATION = Calibration.of(HeatKnowledge.numbers());
    private static final String HEADER = "device,power_w,pullback_s_per_cm,cycles,pulses_per_cm,wall_mm,tumescent_mm,"
            + "tumescent_c,killed_mm,delayed_mm,char_seen\n";
    private static final String ROW = "rf-bipolar-pullback,6,12,,,0.65,8,27,0.6,0.65,no\n";

    private static BenchFile read(String text) {
        return CALIBRATION.read("bench.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> faults(String text) {
        return assertThrows(FaultyInput.class, () -> read(text)).faults().stream()
                .map(Object::toString)
                .toList();
    }

    @Test
    void documentationExample_everyKindOfRow() {
        BenchFile file = read("# made up\n#  date: 2026-03-01\n\n" + HEADER + ROW
                + "# a comment between rows\n"
                + "rf-segmental-7cm,,,2,,0.9,8,27,0.7,,\n"
                + "\"steam\",,,,2.5,0.65,0,20,,0.65,yes\r\n");
        assertEquals(Optional.of(LocalDate.of(2026, 3, 1)), file.date());
        assertEquals(
                List.of(
                        new HeatSetting.Pulled("rf-bipolar-pullback", 6, 12),
                        new HeatSetting.Held("rf-segmental-7cm", 2),
                        new HeatSetting.Pulsed("steam", 2.5)),
                file.rows().stream().map(BenchRow::setting).toList());
        assertEquals(List.of(5, 7, 8), file.rows().stream().map(BenchRow::line).toList());
        assertEquals(VeinSlice.of(0.65, 0, 20), file.rows().get(2).slice());
        assertEquals(
                Optional.of(new BenchRow.Depth(0.6, OptionalDouble.empty())),
                file.rows().get(0).killed());
        assertEquals(Optional.empty(), file.rows().get(1).charSeen());
        assertEquals(4, file.depths());
        assertEquals(2, file.depthsInsideTheWall());
        assertEquals(3, file.conditions());
    }

    @Test
    void columnsInAnyOrder_withDeviations() {
        BenchFile file =
                read("killed_sd_mm,delayed_sd_mm,char_seen,delayed_mm,killed_mm,tumescent_c,tumescent_mm,wall_mm,"
                        + "pulses_per_cm,cycles,pullback_s_per_cm,power_w,device\n"
                        + "0.03,0.05,no,0.5,0.4,27,8,0.65,,,12,6,rf-bipolar-pullback\n");
        assertEquals(
                Optional.of(new BenchRow.Depth(0.4, OptionalDouble.of(0.03))),
                file.rows().get(0).killed());
        assertTrue(file.withDeviations());
    }

    @Test
    void everyFaultAtOnce_withLineAndColumn() {
        assertEquals(
                List.of(
                        "line 2, column 1 (device): there is no device \"rf-bipolar-pullbak\"; did you mean"
                                + " \"rf-bipolar-pullback\"?",
                        "line 2, column 6 (wall_mm): must be given",
                        "line 3, column 2 (power_w): is 75; the heat model answers for 0.5 to 60.0 only",
                        "line 3, column 9 (killed_mm): is deeper than the wall; write wall_mm when the whole wall was dead",
                        "line 3, column 11 (char_seen): must be yes, no or empty, is \"maybe\"",
                        "line 4: has 3 cells, the header has 11",
                        "line 5: cannot be cut into cells: a quotation mark is missing or out of place",
                        "line 6, column 4 (cycles): is not set on rf-bipolar-pullback; leave it empty",
                        "line 6, column 10 (delayed_mm): is smaller than killed_mm, which it includes",
                        "line 7: measures nothing: killed_mm, delayed_mm and char_seen are empty",
                        "line 8, column 9 (killed_mm): must be a plain number such as 0.65, is \"1e-1\""),
                faults(HEADER
                        + "rf-bipolar-pullbak,6,12,,,,8,27,0.6,0.65,no\n"
                        + "rf-bipolar-pullback,75,12,,,0.65,8,27,0.7,,maybe\n"
                        + "rf-bipolar-pullback,6,12\n"
                        + "\"rf-bipolar-pullback,6,12,,,0.65,8,27,0.6,0.65,no\n"
                        + "rf-bipolar-pullback,6,12,1,,0.65,8,27,0.6,0.5,no\n"
                        + "rf-bipolar-pullback,6,12,,,0.65,8,27,,,\n"
                        + "rf-bipolar-pullback,6,12,,,0.65,8,27,1e-1,,\n"));
    }

    @Test
    void faultyHeader() {
        assertEquals(
                List.of(
                        "line 1, column 2: there is no column \"power\"; did you mean \"power_w\"?",
                        "line 1, column 12: wall_mm stands twice",
                        "line 1: the column power_w is missing"),
                faults(HEADER.replace("power_w", "power").replace("char_seen", "char_seen,wall_mm") + ROW));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    rf-segmental-7cm,,,1.5,,0.65,8,27,0.6,,    | must be a whole number, is 1.5
                    rf-segmental-7cm,,,4,,0.65,8,27,0.6,,      | the heat model answers for 1.0 to 3.0 only
                    steam,10,6,,2,0.65,8,27,0.6,,              | is not set on steam
                    laser-1470-radial,10,40,,,0.65,8,27,0.6,,  | answers for 0.5 to 30.0 only
                    laser-1470-radial,10,4,,,2.5,8,27,0.6,,    | answers for 0.15 to 2.0 only
                    laser-1470-radial,10,4,,,0.65,20,27,0.6,,  | answers for 0.0 to 15.0 only
                    laser-1470-radial,10,4,,,0.65,8,45,0.6,,   | answers for 4.0 to 37.0 only
                    laser-1470-radial,10,4,,,0.65,8,27,-0.1,,  | must not be below 0
                    """)
    void oneFault_namesItsRow(String row, String says) {
        List<String> faults = faults(HEADER + row + "\n");
        assertTrue(faults.get(0).startsWith("line 2, column "), () -> faults.toString());
        assertTrue(faults.get(0).contains(says), () -> faults.toString());
    }

    @Test
    void deviationsForSomeDepthsOnly() {
        String header = HEADER.replace("char_seen", "char_seen,killed_sd_mm");
        assertEquals(
                List.of(
                        "line 2: a depth has no standard deviation while line 2 has one: give it for every depth or for none"),
                faults(header + ROW.replace("no\n", "no,0.02\n")));
        assertTrue(faults(header + ROW.replace("no\n", "no,0\n")).get(0).contains("must be above 0"));
    }

    @Test
    void filesThatAreNoTable() {
        assertEquals(List.of("file: has no header line"), faults("# nothing\n"));
        assertEquals(List.of("file: holds no row"), faults(HEADER));
        assertTrue(faults("# date: 1 March\n" + HEADER + ROW).get(0).contains("must name a date"));
        assertTrue(faults(HEADER + ROW.repeat(501)).get(0).contains("more than 500 rows"));
        assertTrue(faults(HEADER + "x".repeat(2001)).get(0).contains("longer than 2000"));
        assertTrue(faults("#".repeat(1_000_001)).get(0).contains("larger than"));
        byte[] noUtf8 = {(byte) 0xC3, 0x28};
        assertTrue(assertThrows(FaultyInput.class, () -> CALIBRATION.read("b", noUtf8))
                .getMessage()
                .contains("UTF-8"));
    }

    /** Whatever stands in a row, it is read or refused with its line, and nothing else happens. */
    @Property(tries = 300)
    void anyRow_isReadOrRefused(@ForAll @CharRange(from = ' ', to = '~') String row) {
        String text = HEADER + row + "\n" + ROW;
        try {
            assertTrue(read(text).rows().size() <= 2);
        } catch (FaultyInput e) {
            assertTrue(e.faults().stream().allMatch(fault -> fault.place().startsWith("line 2")), e.getMessage());
        }
    }
}
