package org.tunica.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.session.SessionPlan;

/** A plan as a page shows it, held against the plan itself. */
class PlanViewTest {
    private static final Tunica TUNICA = Tunica.shipped();

    private static SessionPlan plan(CaseTree tree) {
        return TUNICA.plan(TUNICA.readCase("case", tree.bytes()));
    }

    private static ShareBar bar(PlanView view, String says) {
        return view.sessions().get(0).shared().stream()
                .filter(bar -> bar.says().equals(says))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySegmentStandsInASessionOrIsNamedAsLeft() {
        SessionPlan plan = plan(CaseTree.demo("both-legs-many-segments"));
        PlanView view = PlanView.of(plan, TUNICA.knowledge());
        int steps = view.sessions().stream()
                .mapToInt(session -> session.steps().size())
                .sum();
        assertEquals(6, steps + view.left().size());
    }

    @Test
    void aShareIsToldWithItsLimitItsSourceAndHowThatStands() {
        SessionPlan plan = plan(CaseTree.demo("both-legs-many-segments"));
        ShareBar bar = bar(PlanView.of(plan, TUNICA.knowledge()), "foam");
        SessionPlan.Total total = plan.sessions().get(0).totals().stream()
                .filter(one -> one.says().equals("foam"))
                .findFirst()
                .orElseThrow();
        assertEquals(total.amount() / total.limit().getAsDouble(), bar.taken().getAsDouble(), 1e-12);
        assertEquals("at most 10 mL", bar.limit());
        assertTrue(bar.origin().startsWith("dose.foam.session, unverified, "), bar.origin());
    }

    @Test
    void aDoseByWeightIsToldInMilligramsOnlyWhereTheWeightIsRecorded() {
        CaseTree tree = CaseTree.demo("both-legs-many-segments");
        assertTrue(bar(PlanView.of(plan(tree), TUNICA.knowledge()), "lidocaine")
                .limit()
                .endsWith("(1792 mg at 64 kg)"));
        PlanView without = PlanView.of(plan(tree.set("patient.weightKg", null)), TUNICA.knowledge());
        without.sessions().stream()
                .flatMap(session -> session.shared().stream())
                .forEach(bar -> assertFalse(bar.amount().contains("mg at"), bar.amount()));
    }

    @Test
    void whatPassesItsLimitIsSaidAndDrawnBeyondTheLine() {
        ShareBar over = new ShareBar("foam", "12 mL", "at most 10 mL", OptionalDouble.of(1.2), "", "", List.of());
        assertEquals("120 % of the most: ABOVE IT", over.full());
        ShareBar full = new ShareBar("foam", "10 mL", "at most 10 mL", OptionalDouble.of(1), "", "", List.of());
        assertEquals("100 % of the most", full.full());
        assertTrue(over.svg().length() > full.svg().length());
        assertEquals("", new ShareBar("time", "90 min", "", OptionalDouble.empty(), "", "", List.of()).svg());
        assertEquals(
                List.of(),
                List.of(over, full).stream()
                        .filter(bar -> bar.svg().contains("style="))
                        .toList());
    }
}
