package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.FaultyInput;

/** k here is that of knowledge/anonymity.yaml, 5. */
class ReleaseTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String AURA = "[\"migraine-with-aura\"]";

    @Test
    void crowdOfFive_isReleasedTogether_oneByOneIsNot() {
        List<WaitingCase> five = alike(5, "[]");
        assertEquals(5, TUNICA.pastCases().release(EachCase.NONE).of(five).size());
        assertTrue(refusal(EachCase.NONE, five.subList(0, 4))
                .contains("it waits for 1 more with invented, age 60-69 years, sex female"));
    }

    @Test
    void releasedCase_differsFromTheWaitingOneInItsFormatAlone() {
        List<WaitingCase> five = alike(5, "[]");
        PastCase released = TUNICA.pastCases().release(EachCase.NONE).of(five).get(0);
        assertEquals(
                TUNICA.pastCases().toLine(five.get(0)).replace("tunica-waiting/1", "tunica-past/1"),
                TUNICA.pastCases().toLine(released));
    }

    @Test
    void baseThatHasTheCrowd_takesOneMore() {
        List<PastCase> base = TUNICA.pastCases().release(EachCase.NONE).of(alike(5, "[]"));
        WaitingCase one = waiting(99, "[]");
        assertEquals(
                1, TUNICA.pastCases().release(base::forEach).of(List.of(one)).size());
    }

    @Test
    void rareCondition_waitsForFiveWhoHaveIt() {
        List<PastCase> base = TUNICA.pastCases().release(EachCase.NONE).of(alike(5, "[]"));
        String says = refusal(base::forEach, List.of(waiting(99, AURA)));
        assertTrue(says.contains("it waits for 4 more with") && says.contains("migraine with aura"), says);
        assertEquals(
                5, TUNICA.pastCases().release(base::forEach).of(alike(5, AURA)).size());
    }

    /** Whoever looks for a real person passes over those who never were. */
    @Test
    void inventedCases_areNoCrowdForARealOne() {
        List<PastCase> base = TUNICA.pastCases().release(EachCase.NONE).of(alike(5, "[]"));
        WaitingCase real = read(line(99, "[]").replace("\"invented\":true", "\"invented\":false"));
        assertTrue(refusal(base::forEach, List.of(real)).contains("it waits for 4 more with age 60-69 years"));
    }

    @Test
    void places_tellWhereEachWouldStandIfAllWereReleased() {
        List<WaitingCase> waiting = new ArrayList<>(alike(5, "[]"));
        waiting.add(waiting(99, AURA));
        List<Release.Place> places = TUNICA.pastCases().release(EachCase.NONE).places(waiting);
        assertEquals(
                List.of(0, 0, 0, 0, 0, 4),
                places.stream().map(Release.Place::missing).toList());
    }

    @Test
    void coarsening_tellsLessAndNeverSomethingFalse() {
        WaitingCase aura = waiting(1, AURA);
        WaitingCase less = TUNICA.pastCases()
                .coarser(
                        aura,
                        EnumSet.of(Coarsening.What.AGE, Coarsening.What.YEAR, Coarsening.What.SEX, Coarsening.What.LEG),
                        Set.of("migraine-with-aura"));
        assertEquals(Optional.of(Band.between(50, 69)), less.ageBandYears());
        assertEquals(OptionalInt.empty(), less.year());
        assertEquals(Optional.empty(), less.caseFile().patient().sex());
        assertEquals(Optional.empty(), less.caseFile().patient().conditions(), "unknown, not absent");
        assertEquals("not told", Profile.of(less).told().get(5), "the class of the leg");
        WaitingCase none = TUNICA.pastCases().coarser(less, EnumSet.of(Coarsening.What.AGE), Set.of());
        assertEquals(Optional.empty(), none.ageBandYears());
        assertEquals(less, read(TUNICA.pastCases().toLine(less)), "it can be read again");
        assertThrows(FaultyInput.class, () -> TUNICA.pastCases().coarser(less, Set.of(), Set.of("pacemaker")));
    }

    private static String refusal(EachCase base, List<WaitingCase> waiting) {
        return assertThrows(
                        FaultyInput.class,
                        () -> TUNICA.pastCases().release(base).of(waiting))
                .getMessage();
    }

    private static List<WaitingCase> alike(int count, String conditions) {
        List<WaitingCase> alike = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            alike.add(waiting(i + conditions.length() * 100, conditions));
        }
        return alike;
    }

    private static WaitingCase waiting(int number, String conditions) {
        return read(line(number, conditions));
    }

    private static String line(int number, String conditions) {
        return PastCaseReaderTest.INVENTED
                .replace("tunica-past/1", "tunica-waiting/1")
                .replace("0123456789abcdef01234567", String.format("%024x", number))
                .replace(AURA, conditions);
    }

    private static WaitingCase read(String line) {
        return TUNICA.pastCases().readWaitingCase("waiting", line.getBytes(StandardCharsets.UTF_8));
    }
}
