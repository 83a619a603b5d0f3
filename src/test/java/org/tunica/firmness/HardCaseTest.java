package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Standing;
import org.tunica.plan.Advice;
import org.tunica.plan.RankingFirmness;
import org.tunica.plan.Reason;
import org.tunica.plan.SegmentAdvice;

/** Which of the invented cases are for the meeting, and that saying so changes nothing else. */
class HardCaseTest {
    private static final Tunica TUNICA = Tunica.shipped();

    @Test
    void aStraightTrunkIsNoHardCase() {
        SegmentAdvice trunk = first(CaseTree.demo("straight-thigh-trunk"));
        assertEquals(RankingFirmness.State.FIRM, trunk.ranking().state());
        assertEquals(List.of(), trunk.hardCase());
    }

    @Test
    void channelsThatCameBackAreForTheMeeting_withEverythingBehindIt() {
        SegmentAdvice channels = first(CaseTree.demo("recurrent-groin-channels"));
        assertEquals(List.of("MEE-007"), ids(channels));
        Reason sign = channels.hardCase().get(0);
        assertEquals(Reason.Stands.CALLS_THE_MEETING, sign.stands());
        assertEquals(Standing.UNVERIFIED, sign.standing());
        assertEquals("S-0900", sign.source());
        assertEquals("0040", sign.change());
        assertFalse(sign.says().isBlank());
        assertEquals(List.of(), sign.inDoubt());
    }

    /** The two foams toss for the lead, but foam leads; whether foam or glue leads the last is a matter for the meeting. */
    @Test
    void whichDrugLeadsIsNoDispute_whichFamilyIs() {
        SegmentAdvice channels = first(CaseTree.demo("recurrent-groin-channels"));
        assertEquals(RankingFirmness.State.NOT_FIRM, channels.ranking().state());
        assertEquals(RankingFirmness.State.FIRM, channels.ranking().familyState());
        SegmentAdvice calf = advise(TUNICA, CaseTree.demo("both-legs-many-segments")).segments().stream()
                .filter(segment -> segment.ranking().familyState() == RankingFirmness.State.NOT_FIRM)
                .findFirst()
                .orElseThrow();
        assertTrue(ids(calf).contains("MEE-001"));
    }

    @Test
    void whereEveryWayIsCarefulThatIsASign() {
        assertEquals(List.of("MEE-002"), ids(first(CaseTree.demo("large-trunk-anticoagulated"))));
    }

    /** Closing the vein waits; nobody need talk about it. */
    @Test
    void pregnancyAloneIsNoSign() {
        SegmentAdvice trunk = first(CaseTree.demo("pregnancy"));
        assertEquals(RankingFirmness.State.NONE, trunk.ranking().state());
        assertEquals(List.of(), trunk.hardCase());
    }

    @Test
    void whatIsNotRecordedIsASignInDoubt() {
        Reason sign = first(CaseTree.demo("straight-thigh-trunk").set("limbs.0.segments.0.earlierTreatment", null))
                .hardCase()
                .stream()
                .filter(reason -> reason.rule().equals("MEE-007"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("the earlier treatment"), sign.inDoubt());
    }

    @Test
    void theRankingSaysWhatItIsHeldAgainst() {
        RankingFirmness ranking = first(CaseTree.demo("straight-thigh-trunk")).ranking();
        assertEquals(TUNICA.knowledge().value(ranking.limit()), ranking.leastShare());
        assertEquals(Standing.LOCAL, ranking.standing());
        assertEquals("S-0901", ranking.source());
    }

    /** Without the rules after the ranking everything but their signs is the same. */
    @Test
    void rulesAfterTheRankingChangeNothingOfIt() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.keySet()
                .removeIf(name -> name.startsWith("rules/6-meeting/")
                        || name.contains("0040-signs")
                        || name.equals("knowledge/limits/meeting.yaml"));
        Tunica without = Tunica.of(Bundle.of(texts));
        CaseTree tree = CaseTree.demo("recurrent-groin-channels");
        SegmentAdvice told = first(tree);
        SegmentAdvice silent = advise(without, tree).segments().get(0);
        assertEquals(List.of(), silent.hardCase());
        assertEquals(told.withHardCase(List.of()), silent);
        assertTrue(told.options().stream()
                .flatMap(option -> option.reasons().stream())
                .noneMatch(reason -> reason.rule().startsWith("MEE")));
    }

    private static List<String> ids(SegmentAdvice segment) {
        return segment.hardCase().stream().map(Reason::rule).toList();
    }

    private static SegmentAdvice first(CaseTree tree) {
        return advise(TUNICA, tree).segments().get(0);
    }

    private static Advice advise(Tunica tunica, CaseTree tree) {
        return tunica.advise(tunica.readCase("case", tree.bytes()));
    }
}
