package org.tunica.firmness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.Criterion;
import org.tunica.casefile.Room.CostClass;
import org.tunica.plan.Advice;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;

/** What becomes of cost classes in an advice; the case is invented. */
class CostInAdviceTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final String DEMO = "even-first-choices-with-cost-classes";
    private static final String CLASSES = "room.costClasses";
    private static final String LASER = "laser-1470-radial";
    private static final String ELEMENT = "rf-segmental-7cm";

    @Test
    void theDearerOfTwoFirstChoicesLeadsLessOften_andStaysFirst() {
        Advice with = advise(CaseTree.demo(DEMO));
        Advice without = advise(CaseTree.demo(DEMO).set(CLASSES, null));
        assertTrue(option(with, ELEMENT).firstPlaceShare()
                < option(without, ELEMENT).firstPlaceShare());
        assertTrue(
                option(with, LASER).firstPlaceShare() > option(without, LASER).firstPlaceShare());
        assertEquals(ranking(without), ranking(with));
        assertTrue(option(with, LASER).firstWhen().contains("a low cost class matters more"));
        assertEquals(Optional.of(CostClass.MIDDLING), option(with, LASER).costClass());
        assertEquals(Optional.empty(), option(without, LASER).costClass());
    }

    @Test
    void whatHasNoClassIsToldToCountAsHigh() {
        Advice with = advise(CaseTree.demo(DEMO));
        String says = "the site gives it no cost class: taken as high";
        assertTrue(option(with, "adhesive").openCriteria().contains(says));
        assertTrue(!option(with, ELEMENT).openCriteria().contains(says));
    }

    /** Classes that are all the same, or of techniques that are not compared, leave no trace; nor does an empty list. */
    @Test
    void classesThatTellNothingApartLeaveTheSameBytes() {
        String without = json(CaseTree.demo(DEMO).set(CLASSES, null));
        List<String> all = List.of(LASER, ELEMENT, "foam-polidocanol", "adhesive");
        for (String word : List.of("low", "middling", "high")) {
            assertEquals(without, json(CaseTree.demo(DEMO).set(CLASSES, null).set(CLASSES + "." + word, all)));
        }
        assertEquals(without, json(CaseTree.demo(DEMO).set(CLASSES, null).set(CLASSES + ".low", List.of("steam"))));
        assertEquals(without, json(CaseTree.demo(DEMO).set(CLASSES, null).set(CLASSES + ".low", List.of())));
        assertNotEquals(without, json(CaseTree.demo(DEMO)));
    }

    @Test
    void whereTheSpecialistPutsCostFirst_itWeighsMost() {
        Advice with = advise(CaseTree.demo(DEMO).set("importance", List.of("low-cost", "durability")));
        FirmnessAdvice firmness = firmness(with);
        assertEquals(List.of(Criterion.LOW_COST, Criterion.DURABILITY), firmness.importance());
        assertTrue(firmness.preferences().get(1).contains("a low cost class weighs where the case puts it"));
        for (FirmnessAdvice.Option option : firmness.options()) {
            List<FirmnessAdvice.Weight> weights = option.centralWeights();
            weights.forEach(weight -> assertTrue(weight.weightShare()
                    <= weights.get(Criterion.LOW_COST.ordinal()).weightShare()));
        }
        assertEquals(ranking(advise(CaseTree.demo(DEMO))), ranking(with));
    }

    @Test
    void anOrderThatNamesCostWithoutAnyClassSaysThatItIsNotWeighed() {
        CaseTree tree = CaseTree.demo(DEMO).set(CLASSES, null).set("importance", List.of("low-cost", "durability"));
        FirmnessAdvice firmness = firmness(advise(tree));
        assertTrue(firmness.preferences().get(1).startsWith("cost is not weighed"), firmness.preferences()::toString);
        FirmnessAdvice other = firmness(advise(tree.copy().set("importance", List.of("durability"))));
        assertEquals(other.options(), firmness.options());
    }

    private static String json(CaseTree tree) {
        return TUNICA.toJson(advise(tree));
    }

    private static Advice advise(CaseTree tree) {
        return TUNICA.advise(TUNICA.readCase("case", tree.bytes()));
    }

    private static FirmnessAdvice firmness(Advice advice) {
        return advice.segments().get(0).firmness().orElseThrow();
    }

    private static FirmnessAdvice.Option option(Advice advice, String technique) {
        return firmness(advice).options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    /** Standing, points and order, which no cost touches. */
    private static List<String> ranking(Advice advice) {
        return advice.segments().get(0).options().stream()
                .map(CostInAdviceTest::line)
                .toList();
    }

    private static String line(OptionAdvice option) {
        return option.technique() + " " + option.standing() + " " + option.score() + " " + option.rank();
    }
}
