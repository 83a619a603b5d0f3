package org.tunica.treatment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;

/** Scans at 1 week (S-0043), 1 to 3 months, 12 months, then yearly: common practice, no source. */
class ScanPlanTest {
    private static final Knowledge KNOWLEDGE = Knowledge.of(Bundle.shipped());
    private static final ScanPlan HEATED = ScanPlan.of(Family.HEAT, Segment.Vein.GREAT_SAPHENOUS, KNOWLEDGE);

    @Test
    void theDays() {
        assertEquals(
                List.of("0-7", "30-91", "365-365", "730-730"),
                HEATED.scans().stream()
                        .map(scan -> scan.fromDays() + "-" + scan.byDays())
                        .toList());
        assertEquals(
                List.of(false, false, false, true),
                HEATED.scans().stream().map(ScanPlan.Scan::optional).toList());
    }

    @Test
    void whatIsSaidStandsNoFirmerThanItsWeakestPart() {
        assertEquals("guideline", HEATED.scans().get(0).standing());
        ScanPlan.Scan foamed = ScanPlan.of(Family.FOAM, Segment.Vein.TRIBUTARY, KNOWLEDGE)
                .scans()
                .get(0);
        assertEquals("unverified", foamed.standing());
        assertEquals("S-0900", foamed.source());
        assertTrue(
                HEATED.scans().stream().skip(1).allMatch(scan -> scan.standing().equals("unverified")));
    }

    @ParameterizedTest
    @CsvSource({
        "SMALL_SAPHENOUS, popliteal",
        "GREAT_SAPHENOUS, femoral",
        "ANTERIOR_ACCESSORY, femoral",
        "PERFORATOR, it joins",
        "TRIBUTARY, near it"
    })
    void whereToLookFollowsTheVein(Segment.Vein vein, String where) {
        ScanPlan plan = ScanPlan.of(Family.ADHESIVE, vein, KNOWLEDGE);
        assertTrue(plan.scans().stream().allMatch(scan -> scan.looksAt().contains(where)));
    }

    /** A scan counts for the one it is nearest to: a late first scan is no second one. */
    @ParameterizedTest
    @CsvSource({"0, 91", "7, 91", "18, 91", "19, 365", "80, 365", "228, 365", "229, 730", "365, 730", "700, 1095"})
    void theScanThatFollows(int scannedDay, long nextBy) {
        assertEquals(
                nextBy,
                HEATED.next(List.of(scannedDay), Optional.empty(), KNOWLEDGE).byDays());
    }

    @Test
    void withoutAnyScanTheFirstIsDue() {
        assertEquals(7, HEATED.next(List.of(), Optional.empty(), KNOWLEDGE).byDays());
    }

    @Test
    void aClotInTheDeepVeinIsLookedAtAfterAWeek() { // S-0043, from memory, unverified
        ScanPlan.Scan next = HEATED.next(List.of(6), Optional.of(6), KNOWLEDGE);
        assertEquals(13, next.byDays());
        assertFalse(next.optional());
        assertEquals("unverified", next.standing());
    }

    @Property(seed = "20260101")
    void theNextScanIsNeverBehind(@ForAll @IntRange(min = 0, max = 4000) int day) {
        ScanPlan.Scan next = HEATED.next(List.of(day), Optional.empty(), KNOWLEDGE);
        assertTrue(next.byDays() > day, () -> day + ": " + next);
    }

    @Test
    void everyFamilyAndVeinHasAPlan() {
        Stream.of(Family.values())
                .forEach(family -> Stream.of(Segment.Vein.values())
                        .forEach(vein -> assertEquals(
                                4, ScanPlan.of(family, vein, KNOWLEDGE).scans().size())));
    }
}
