package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Family;
import org.tunica.pastcases.PastCase;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.Hit;
import org.tunica.similar.PastSegment;
import org.tunica.similar.PastSigns;
import org.tunica.similar.SimilarFilter;

/**
 * Signs of a hard case in past cases, at their bounds: the bases are made-up cases, copied as often as a bound needs. The
 * bounds are definitions of this project (source S-0901), so they are read here, too.
 */
class PastSignsTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final double ALIKE = TUNICA.knowledge().value("meeting.alike.min");
    private static final int BASE = (int) TUNICA.knowledge().value("meeting.past-segments.min");
    private static final int FEW = (int) TUNICA.knowledge().value("meeting.rare.max");
    private static final int MANY = (int) TUNICA.knowledge().value("meeting.alike-cases.min");
    private static final int SEARCHED = 400;

    private static final List<PastCase> UNLIKE = new ArrayList<>();
    private static CaseFile question;
    private static SegmentAdvice advised;
    private static PastCase closedByHeat;
    private static PastCase openAfterHeat;
    private static PastCase byFoam;

    /** Looks in the made-up cases for ones like each other that were treated by other kinds of technique, or went otherwise. */
    @BeforeAll
    static void find() {
        question = TUNICA.readCase("case", CaseTree.demo("straight-thigh-trunk").bytes());
        advised = TUNICA.advise(question).segments().get(0);
        List<PastCase> all =
                TUNICA.pastCases().inventedLibrary(1).cases(SEARCHED).toList();
        try (CaseLibrary library = TUNICA.likeness().released("all", all)) {
            List<Hit> hits = library.nearest(
                            question,
                            question.limbs().get(0),
                            question.limbs().get(0).segments().get(0),
                            SimilarFilter.ALL,
                            library.size())
                    .hits();
            List<PastSegment> like =
                    hits.stream().filter(PastSignsTest::alike).map(Hit::past).toList();
            closedByHeat = one(like, Family.HEAT, true);
            openAfterHeat = one(like, Family.HEAT, false);
            byFoam = one(like, Family.FOAM, true);
            Set<String> likeIds = new TreeSet<>();
            like.forEach(past -> likeIds.add(past.pastCase().id()));
            hits.stream()
                    .map(hit -> hit.past().pastCase())
                    .filter(past -> !likeIds.contains(past.id()))
                    .distinct()
                    .limit(BASE)
                    .forEach(UNLIKE::add);
        }
        assertEquals(BASE, UNLIKE.size());
    }

    private static boolean alike(Hit hit) {
        return hit.likeness().orElseThrow().similarity() >= ALIKE;
    }

    private static PastCase one(List<PastSegment> like, Family family, boolean closed) {
        return like.stream()
                .filter(past -> family(past) == family && past.closed().equals(java.util.Optional.of(closed)))
                .findFirst()
                .orElseThrow(() -> new AssertionError("none by " + family + ", closed " + closed))
                .pastCase();
    }

    private static Family family(PastSegment past) {
        return TUNICA.knowledge().technique(past.treated().technique()).family();
    }

    @Test
    void fewLikeIt_isRare_oneMoreIsNot() {
        assertEquals(List.of("rare"), titles(Family.HEAT, UNLIKE, copies(closedByHeat, FEW, 1)));
        assertEquals(List.of(), titles(Family.HEAT, UNLIKE, copies(closedByHeat, FEW + 1, 1)));
        assertEquals(List.of("rare"), titles(Family.HEAT, UNLIKE));
    }

    @Test
    void aSmallBaseTellsNothingOfRarity() {
        List<PastCase> small = UNLIKE.subList(0, 10);
        assertEquals(List.of(), titles(Family.HEAT, small));
    }

    @Test
    void mostTreatedOtherwise_disagree_aBareMajorityDoesNot() {
        List<PastCase> heat = copies(closedByHeat, MANY - MANY / 5, 1);
        List<PastCase> foam = copies(byFoam, MANY / 5, 2);
        assertEquals(List.of("similar cases disagree with the ranking"), titles(Family.FOAM, UNLIKE, heat, foam));
        List<PastCase> fewerByHeat = heat.subList(0, heat.size() - 1);
        List<PastCase> moreByFoam = copies(byFoam, MANY / 5 + 1, 2);
        assertEquals(List.of(), titles(Family.FOAM, UNLIKE, fewerByHeat, moreByFoam));
        assertEquals(List.of(), titles(Family.HEAT, UNLIKE, heat, foam));
    }

    @Test
    void tooFewLikeIt_disagreeWithNothing() {
        assertEquals(List.of(), titles(Family.FOAM, UNLIKE, copies(closedByHeat, MANY - 1, 1)));
    }

    @Test
    void manyFoundOpen_disagree_andTheNumbersStandBeside() {
        int open = (int) Math.ceil(MANY * TUNICA.knowledge().value("meeting.found-open.min"));
        List<PastSigns.Sign> signs =
                signs(Family.HEAT, UNLIKE, copies(closedByHeat, MANY - open, 1), copies(openAfterHeat, open, 3));
        assertEquals(1, signs.size());
        assertTrue(signs.get(0).says().contains("were found open at their last scan"));
        assertEquals(
                List.of(
                        "meeting.past-segments.min",
                        "meeting.alike.min",
                        "meeting.alike-cases.min",
                        "meeting.found-open.min"),
                signs.get(0).limits().stream().map(limit -> limit.id()).toList());
        assertTrue(signs.get(0).invented());
        assertEquals(
                List.of(),
                titles(
                        Family.HEAT,
                        UNLIKE,
                        copies(closedByHeat, MANY - open + 1, 1),
                        copies(openAfterHeat, open - 1, 3)));
    }

    @SafeVarargs
    private static List<String> titles(Family first, List<PastCase>... bases) {
        return signs(first, bases).stream().map(PastSigns.Sign::title).toList();
    }

    @SafeVarargs
    private static List<PastSigns.Sign> signs(Family first, List<PastCase>... bases) {
        List<PastCase> all = new ArrayList<>();
        for (List<PastCase> base : bases) {
            all.addAll(base);
        }
        try (CaseLibrary library = TUNICA.likeness().released("some", all)) {
            return TUNICA.likeness().signs(library).of(question, withFirst(first));
        }
    }

    /** The advice with an option of a family first. */
    private static SegmentAdvice withFirst(Family family) {
        List<OptionAdvice> options = advised.options().stream()
                .filter(option -> option.standing().ranked())
                .sorted(Comparator.comparing((OptionAdvice option) -> option.family() != family))
                .collect(Collectors.toList());
        return advised.with(options, advised.ranking(), advised.firmness().orElseThrow());
    }

    private static List<PastCase> copies(PastCase of, int count, int kind) {
        List<PastCase> copies = new ArrayList<>();
        String line = TUNICA.pastCases().toLine(of);
        for (int i = 0; i < count; i++) {
            String copy = line.replace(of.id(), String.format(Locale.ROOT, "p-%012x%012x", kind, i));
            copies.add(TUNICA.pastCases().readPastCase("copy", copy.getBytes(StandardCharsets.UTF_8)));
        }
        return copies;
    }
}
