package org.tunica.workroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Quantity;
import org.tunica.proposal.Author;

/** A working copy edited number by number and file by file. */
class DraftTest {
    private static final String DISTANCES = Author.DISTANCES;

    @TempDir
    private static Path folder;

    private static Draft draft;

    @BeforeAll
    static void begin() throws IOException {
        draft = new Draft(Author.at(folder.resolve("copy")).copy());
    }

    @Test
    void everyNumberWithAnEntryOfItsOwn_typedAsItIs_movesNothingButDayAndChange() {
        List<String> without = new ArrayList<>();
        Bundle bundle = draft.copy().after();
        for (Quantity number : Tunica.shipped().knowledge().quantities().values()) {
            NumberEdit.find(bundle, number.id())
                    .ifPresentOrElse(place -> stays(place, number), () -> without.add(number.id()));
        }
        assertTrue(without.size() < 200, () -> without.size() + " are edited as text alone: " + without);
    }

    private static void stays(NumberEdit.Place place, Quantity number) {
        String value = place.entry().replaceFirst("(?s).*\\n  value: (\\S+).*", "$1");
        NumberEdit same = new NumberEdit(
                number.id(),
                value,
                number.provenance().source(),
                number.provenance().standing().word(),
                "");
        String text = same.in(
                place, number.provenance().change(), number.provenance().since().toString());
        assertEquals(place.text(), text, number.id());
    }

    @Test
    void aNote_isWrittenInThePlaceOfTheOldOne() {
        NumberEdit.Place place = NumberEdit.find(draft, "nerve.gap.min").orElseThrow();
        String text = new NumberEdit("nerve.gap.min", "6", "S-0900", "unverified", "first line\nsecond line")
                .in(place, "0099", "2026-03-02");
        assertTrue(text.contains("nerve.gap.min:\n"), text);
        assertTrue(text.contains("  value: 6\n  unit: mm\n  source: S-0900\n"), text);
        assertTrue(
                text.contains("  change: \"0099\"\n  note: >-\n    first line\n    second line\nnerve.gap.touching:\n"),
                text);
    }

    @Test
    void everythingThatCannotBeTaken_isToldAtOnce() {
        NumberEdit.Place place = NumberEdit.find(draft, "nerve.gap.min").orElseThrow();
        FaultyInput refused = assertThrows(
                FaultyInput.class,
                () -> new NumberEdit("nerve.gap.min", "5 mm", "a paper", "sure", "caf\u00e9").in(place, "0099", "x"));
        assertEquals(
                List.of("value", "source", "standing", "note"),
                refused.faults().stream().map(fault -> fault.place()).toList());
    }

    @Test
    void aFile_isSavedByItsAuthorAgainstWhatWasSeen() throws IOException {
        String seen = draft.text(DISTANCES).orElseThrow();
        refused("its author alone edits it", () -> draft.save("ben", DISTANCES, Draft.mark(seen), "x"));
        refused("was changed meanwhile", () -> draft.save("anna", DISTANCES, Draft.mark("other"), "x"));
        for (String path :
                List.of("rules/../../x.rule", "/etc/x.rule", "before/rules/a.rule", "change.json", "rules/")) {
            refused("is no name of a file here", () -> draft.save("anna", path, Draft.mark(""), "x"));
        }
        refused(
                "is larger than",
                () -> draft.save("anna", "features/a.feature", Draft.mark(""), "x".repeat(1_000_001)));
        draft.save("anna", DISTANCES, Draft.mark(seen), seen.replace("\n", "\r\n"));
        assertEquals(seen, Files.readString(folder.resolve("copy").resolve(DISTANCES)));
    }

    private static void refused(String says, Runnable act) {
        FaultyInput refused = assertThrows(FaultyInput.class, act::run);
        assertTrue(refused.getMessage().contains(says), refused.getMessage());
    }
}
