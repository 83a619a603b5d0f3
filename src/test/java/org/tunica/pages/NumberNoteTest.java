package org.tunica.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Standing;

/** The help beside numbers says what each is, where it comes from and how it stands. */
class NumberNoteTest {
    private static final Tunica TUNICA = Tunica.shipped();

    @Test
    void aLimit_isToldWithItsSourceItsRangeAndItsStanding() {
        NumberNote note = NumberNote.of(List.of("posture.standing-to-lying"), TUNICA.knowledge())
                .get(0);
        assertEquals("19 % (range 16 to 24)", note.value());
        assertTrue(note.says().startsWith("median fall of the diameter"), note.says());
        assertTrue(note.from().startsWith("S-0087, "), note.from());
        assertTrue(note.standing().startsWith("published"), note.standing());
    }

    @ParameterizedTest
    @EnumSource(Standing.class)
    void everyStanding_isToldByItsWord(Standing standing) {
        assertTrue(NumberNote.words(standing).toLowerCase(Locale.ROOT).startsWith(standing.word()));
    }

    @Test
    void everyNumberOfAnAdvice_hasHelp_andNoHelpIsHalf() {
        AdviceView view = view("straight-thigh-trunk");
        List<NumberNote> notes = new ArrayList<>();
        for (SegmentView segment : view.segments()) {
            for (NumberView number : segment.numbers()) {
                assertFalse(number.notes().isEmpty(), number.says());
                notes.addAll(number.notes());
            }
            for (OptionView option : segment.ranked()) {
                assertEquals(option.custom().isEmpty(), option.notes().isEmpty(), option.says());
                notes.addAll(option.notes());
                option.reasons()
                        .forEach(reason -> reason.limits()
                                .forEach(id -> assertTrue(
                                        view.named().limits().stream()
                                                .anyMatch(limit -> limit.id().equals(id)),
                                        id)));
            }
            assertTrue(
                    segment.notes().stream().anyMatch(note -> note.name().equals("heat.nerve.peak.red")),
                    segment.notes()::toString);
            notes.addAll(segment.notes());
            segment.nearMisses().forEach(miss -> {
                assertFalse(miss.notes().isEmpty(), miss.says());
                notes.addAll(miss.notes());
            });
        }
        for (NumberNote note : notes) {
            for (String part : List.of(note.name(), note.says(), note.from(), note.standing())) {
                assertFalse(part.isBlank(), note.toString());
            }
        }
    }

    @Test
    void aLumenMeasuredLying_tellsByWhichNumberItWasBroughtUpright() {
        CaseTree lying = CaseTree.demo("straight-thigh-trunk").set("limbs.0.segments.0.measured.posture", "lying");
        NumberView lumen = view(lying).segments().get(0).numbers().get(0);
        assertTrue(lumen.value().endsWith("(standing, estimated from lying)"), lumen.value());
        assertEquals("posture.standing-to-lying", lumen.notes().get(1).name());
        assertEquals(
                1,
                view("straight-thigh-trunk")
                        .segments()
                        .get(0)
                        .numbers()
                        .get(0)
                        .notes()
                        .size());
    }

    private static AdviceView view(String demo) {
        return view(CaseTree.demo(demo));
    }

    private static AdviceView view(CaseTree tree) {
        CaseFile caseFile = TUNICA.readCase("case", tree.bytes());
        return AdviceView.of(caseFile, TUNICA.advise(caseFile), TUNICA.knowledge());
    }
}
