package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ledger of evidence and conflicts: every fault a writer can make in it is named with file and entry. */
class LedgerTest {
    private static final String DOSES = "knowledge/evidence/b-doses-and-settings.yaml";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    evidence/b-doses-and-settings.yaml | B1-01: | b1-1: | b1-1: must be called by section and row, such as D-24 or A1-07
                    evidence/b-doses-and-settings.yaml | sources: [S-0012] | sources: [S-9012] | B1-01.sources: there is no source "S-9012"
                    evidence/b-doses-and-settings.yaml | sources: [S-0012] | sources: [] | B1-01.sources: at least one source must be named
                    evidence/b-doses-and-settings.yaml | tag: memory | tag: hearsay | B1-01.tag: "hearsay" is not a known word
                    evidence/b-doses-and-settings.yaml | tag: memory | tag: memory~  left: nothing asks | B1-01.left: give either rules or limits or the reason why there are none
                    evidence/b-doses-and-settings.yaml | [dose.polidocanol.day] | [dose.polidocanol.daily] | B1-01.limits: there is no number "dose.polidocanol.daily"; did you mean "dose.polidocanol.day"?
                    evidence/b-doses-and-settings.yaml | steam.energyPerPulseJ | steam.energyJ | B5-10.limits: there is no number "steam.energyJ"
                    conflicts.yaml | CON-01: | CON-1: | CON-1: must be called by CON- and two digits
                    conflicts.yaml | does: warns | does: worries | CON-01.steps[0].does: "worries" is not a known word
                    conflicts.yaml | rules: [CAU-047] | rules: [] | CON-01.steps[0].rules: at least one rule must be named
                    conflicts.yaml | values: [dose.tumescent.confirm, | values: [ | CON-01.steps: dose.tumescent.confirm is none of the values
                    conflicts.yaml | at: dose.tumescent.confirm | at: dose.tumescent.stop | CON-01.values: dose.tumescent.confirm is passed over: no step takes it
                    conflicts.yaml | values: [dose.tumescent.confirm, | values: [dose.tumescent.firm, | CON-01.values: there is no quantity "dose.tumescent.firm"
                    conflicts.yaml | values: [dose.tumescent.confirm, | left: not settled~  values: [dose.tumescent.confirm, | CON-01.left: give either steps or the reason why there are none
                    """)
    void onePlantedFault_isNamedWithFileAndEntry(String file, String old, String changed, String says) {
        String path = "knowledge/" + file;
        List<String> faults =
                new Planted().change(path, old, changed.replace("~", "\n")).faults();
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith(path) && fault.contains(says)), faults::toString);
    }

    @Test
    void rowWithoutCarrierAndWithoutReason() {
        List<String> faults = new Planted()
                .change(DOSES, "  rules: [EXC-031, EXC-035, CAU-062]\n  limits: [dose.polidocanol.day]\n", "")
                .faults();
        assertEquals(
                List.of(DOSES + ": B1-01.left: give either rules or limits or the reason why there are none,"
                        + " not both and not neither"),
                faults);
    }

    @Test
    void rowThatStandsTwice_inTwoSections() {
        String row = "B1-01:\n  says: again\n  sources: [S-0012]\n  tag: memory\n  left: planted\n";
        List<String> faults =
                new Planted().add("knowledge/evidence/z-again.yaml", row).faults();
        assertEquals(1, faults.size(), faults::toString);
        assertTrue(faults.get(0).contains("B1-01: \"B1-01\" stands in " + DOSES + " too"), faults::toString);
    }

    /** The sheet has these many rows by section, counted by hand; a row that is lost would be evidence that is lost. */
    @Test
    void everyRowIsThere_withoutAGap() {
        Map<String, Integer> rows = new TreeMap<>();
        Knowledge.of(Bundle.shipped()).evidence().keySet().forEach(id -> {
            String section = id.substring(0, id.indexOf('-'));
            int row = Integer.parseInt(id.substring(id.indexOf('-') + 1));
            assertEquals(rows.merge(section, 1, Integer::sum), row, id);
        });
        assertEquals(
                "{A1=21, A2=12, A3=19, A4=4, B1=13, B2=10, B3=15, B4=8, B5=12, B6=8, C=17, C1=6, D=42,"
                        + " E1=22, E2=9, E3=12, E4=8, F=18, G=12}",
                rows.toString());
    }
}
