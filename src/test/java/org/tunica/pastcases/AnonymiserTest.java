package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Knowledge;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;

class AnonymiserTest {
    private static final Knowledge KNOWLEDGE = Tunica.shipped().knowledge();
    private static final String ID = "p-0123456789abcdef01234567";
    private static final int FIRST_OUTCOME_DAY = AnonymityLimits.of(KNOWLEDGE).outcomeFromDays();

    /** Widths and ends are those of knowledge/anonymity.yaml; 90 and older stand together (S-0151). */
    @ParameterizedTest
    @CsvSource({"29.9,under-30", "30,30-39", "61,60-69", "89.9,80-89", "90,90-or-more", "104,90-or-more"})
    void age_becomesItsBand(double ageYears, String band) {
        assertEquals(band, Banding.ofAge(KNOWLEDGE).of(ageYears).toString());
    }

    @ParameterizedTest
    @CsvSource({"49,under-50", "50,50-59", "74.5,70-79", "129.9,120-129", "130,130-or-more"})
    void weight_becomesItsBand(double weightKg, String band) {
        assertEquals(band, Banding.ofWeight(KNOWLEDGE).of(weightKg).toString());
    }

    @ParameterizedTest
    @CsvSource({"30-39,30-49", "40-49,30-49", "60-69,50-69", "80-89,70-89", "90-or-more,90-or-more", "under-30,under-30"
    })
    void band_growsWiderOverItsNeighbours(String band, String wider) {
        assertEquals(
                wider,
                Banding.ofAge(KNOWLEDGE)
                        .coarser(Band.read(band).orElseThrow(), 2)
                        .toString());
    }

    /** Own arithmetic on the steps of knowledge/anonymity.yaml. */
    @Test
    void numbers_areRoundedToTheirStep_andNoughtStaysNought() {
        Rounding rounding = new Rounding(KNOWLEDGE);
        assertEquals(0.6, rounding.of(Step.WALL, 0.62));
        assertEquals(7.4, rounding.of(Step.LUMEN, 7.3512));
        assertEquals(0.1, rounding.of(Step.LENGTH, 0.01), "what is open stays open");
        assertEquals(0.0, rounding.of(Step.LENGTH, 0));
        assertEquals(OptionalDouble.empty(), rounding.of(Step.WALL, OptionalDouble.empty()));
    }

    @Test
    void outcomeOnTheDay_isOne_theDayBefore_isNone() {
        assertEquals(ID, anonymise(FIRST_OUTCOME_DAY, true).id());
        FaultyInput early = assertThrows(FaultyInput.class, () -> anonymise(FIRST_OUTCOME_DAY - 1, true));
        assertTrue(
                early.getMessage().contains("no treated segment was scanned on day " + FIRST_OUTCOME_DAY),
                early.getMessage());
        assertThrows(FaultyInput.class, () -> anonymise(FIRST_OUTCOME_DAY, false), "a visit without a scan");
    }

    @Test
    void yearAlone_staysOfTheDay() {
        assertEquals(OptionalInt.of(2024), anonymise(FIRST_OUTCOME_DAY, true).year());
    }

    private static WaitingCase anonymise(int day, boolean scanned) {
        PastCase like = PastCases.invented();
        DeliveredSession done = like.delivered().get(0);
        DeliveredSession dated = new DeliveredSession(
                done.format(),
                "larkspur-1",
                done.session(),
                Optional.of("2024-03-02"),
                done.people(),
                done.indication(),
                done.severityPoints(),
                done.consent(),
                done.timeOut(),
                done.otherLidocaineMg(),
                done.otherAdrenaline(),
                done.totals(),
                done.segments(),
                done.aftercare());
        FollowUp.FollowedLimb limb = like.followUp().limbs().get(0);
        FollowUp.Seen seen = new FollowUp.Seen(
                "L1",
                scanned ? OptionalDouble.of(4) : OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.of(List.of()),
                Optional.empty());
        FollowUp.Visit visit = new FollowUp.Visit(
                day, OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.of(List.of(seen)));
        FollowUp followUp = new FollowUp(
                "larkspur-1",
                List.of(new FollowUp.FollowedLimb(
                        limb.side(), limb.ceapBefore(), limb.vcssBefore(), limb.treated(), List.of(visit))));
        CaseFile caseFile = like.caseFile();
        return new Anonymiser(KNOWLEDGE, () -> ID)
                .anonymise(new Finished(
                        caseFile, List.of(dated), followUp, OptionalInt.empty(), "site-a1", true, List.of()));
    }
}
