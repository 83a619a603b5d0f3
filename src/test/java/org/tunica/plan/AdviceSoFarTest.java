package org.tunica.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tunica.Cold;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;

/** What is said before the heat is computed still holds afterwards, and nothing is ranked too early. */
class AdviceSoFarTest {
    /** Has met no wall yet, whatever other tests asked. */
    private static final Tunica FRESH = Cold.tunica();

    @Test
    void beforeAnyHeat_nothingIsRanked_andWhatIsSaidHoldsAfterwards() throws IOException {
        CaseFile caseFile = demo("straight-thigh-trunk");
        AdviceSoFar before = FRESH.adviseSoFar(caseFile);
        assertFalse(before.awaited().isEmpty());
        assertFalse(before.isWhole());
        SegmentAdvice early = before.advice().segments().get(0);
        assertFalse(early.options().isEmpty());
        assertTrue(early.options().stream().allMatch(option -> option.rank().isEmpty()));
        assertEquals(List.of(), early.nearMisses());

        SegmentAdvice whole = FRESH.advise(caseFile).segments().get(0);
        early.options().forEach(option -> assertEquals(standing(whole, option.technique()), option.standing()));
        Set<String> spoken =
                early.options().stream().map(OptionAdvice::technique).collect(Collectors.toSet());
        before.awaited().forEach(one -> assertTrue(spoken.add(one.technique()), one::toString));
        assertEquals(whole.options().stream().map(OptionAdvice::technique).collect(Collectors.toSet()), spoken);
    }

    @Test
    void onceComputed_theRankingIsThatOfTheWholeAdvice() throws IOException {
        CaseFile caseFile = demo("defibrillator");
        Advice whole = FRESH.advise(caseFile);
        AdviceSoFar after = FRESH.adviseSoFar(caseFile);
        assertEquals(List.of(), after.awaited());
        assertFalse(after.isWhole(), "how firm it is takes computing");
        assertTrue(AdviceSoFar.whole(whole).isWhole());
        assertEquals(ranks(whole), ranks(after.advice()));
    }

    /** The wall is not recorded, so the heat model has no question to answer and nothing is awaited. */
    @Test
    void whatCannotBeComputed_isNotAwaited() throws IOException {
        AdviceSoFar soFar = FRESH.adviseSoFar(demo("missing-wall-thickness"));
        assertEquals(List.of(), soFar.awaited());
    }

    /** A rule that excludes everything needs no heat for it. */
    @Test
    void whatIsExcludedWhateverTheHeat_isToldAtOnce() throws IOException {
        AdviceSoFar soFar = FRESH.adviseSoFar(demo("pregnancy"));
        assertEquals(List.of(), soFar.awaited());
        soFar.advice().segments().get(0).options().forEach(option -> {
            assertEquals(OptionStanding.EXCLUDED, option.standing());
            assertTrue(option.reasons().stream()
                    .allMatch(reason -> reason.inDoubt().isEmpty()));
        });
    }

    private static List<String> ranks(Advice advice) {
        return advice.segments().get(0).options().stream()
                .map(option -> option.technique() + " " + option.standing() + " " + option.rank())
                .toList();
    }

    private static OptionStanding standing(SegmentAdvice segment, String technique) {
        return segment.options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow()
                .standing();
    }

    private static CaseFile demo(String name) throws IOException {
        Path file = Path.of("knowledge/demo/" + name + ".json");
        return FRESH.readCase(name, Files.readAllBytes(file));
    }
}
