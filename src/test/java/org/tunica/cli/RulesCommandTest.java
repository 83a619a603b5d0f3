package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.rules.Rule;

class RulesCommandTest {
    private static final String SMALL_SAPHENOUS = "knowledge/demo/small-saphenous-near-sural-nerve.json";

    private record Run(int code, String out, String err) {
        static Run of(String... args) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int code = Main.run(args, new PrintWriter(out), new PrintWriter(err));
            return new Run(code, out.toString(), err.toString());
        }

        /** The output as one line, for texts that wrap. */
        String flat() {
            return out.replaceAll("\\s+", " ");
        }
    }

    @Test
    void explainTellsWhatSpoke_whatCameClose_andWhatOneNumberKeptQuiet() {
        Run run = Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", "L1/laser-1470-radial");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().contains("CAU-032"), run.out());
        assertTrue(run.flat().contains("+ the gap to the nerve is less than limit nerve.gap.min [2 mm; limit 5 mm]"));
        assertTrue(run.flat()
                .contains("EXC-028 (exclude; local): the nerve touches the vein that would be heated - the gap to the"
                        + " nerve is less than limit nerve.gap.touching [2 mm; limit 1 mm]"));
        assertTrue(run.flat().contains("Close to a limit:"));
        assertTrue(run.flat().contains(Advice.CAUTION));
        assertFalse(run.flat().contains("EXC-001"), "pregnancy is no near thing");
        assertTrue(Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", "L1/laser-1470-radial", "--all")
                .flat()
                .contains("EXC-001"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "L1 | --option must be REF/TECHNIQUE",
                "L9/laser-1470-radial | the case has none of that name",
                "L1/laser-1470-radal | did you mean \"laser-1470-radial\"",
            })
    void explainNamesWhatIsWrongWithTheOption(String option, String message) {
        Run run = Run.of("rules", "explain", SMALL_SAPHENOUS, "--option", option);
        assertEquals(2, run.code());
        assertTrue(run.err().contains(message), run.err());
        assertEquals("", run.out());
    }

    @Test
    void showGivesTheSentenceWithLimitsSourcesAndChange() {
        Run run = Run.of("rules", "show", "CAU-022");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.flat().contains("and the relaxed lumen is more than limit trunk.non-thermal.max then caution"));
        assertTrue(run.flat().contains("Limit trunk.non-thermal.max = 6 mm, published (S-0050)"), run.out());
        assertTrue(run.flat().contains("Source S-0050: "));
        assertTrue(run.flat().contains("approved by nobody"));
        Run wrong = Run.of("rules", "show", "CAU-0222");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("there is no such rule; did you mean \"CAU-022\""), wrong.err());
    }

    @Test
    void listHasALineForEveryRule_andFilters() {
        Run all = Run.of("rules", "list");
        for (Rule rule : Tunica.shipped().rules().rules()) {
            assertTrue(all.out().contains("\n" + rule.id()) || all.out().startsWith(rule.id()), rule.id());
        }
        Run some = Run.of("rules", "list", "--class", "contraindication", "--standing", "published");
        assertEquals(0, some.code(), some.err());
        assertTrue(some.out()
                .lines()
                .allMatch(line ->
                        line.isEmpty() || line.startsWith("EXC-") || line.startsWith(" ") || line.contains(" of ")));
    }
}
