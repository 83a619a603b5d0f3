package org.tunica.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.And;
import io.cucumber.java.en.Then;
import java.util.List;
import org.tunica.session.SessionPlan;
import org.tunica.session.Shared;

/** What is planned for all segments of a case together. */
public final class PlanSteps {
    private final Clinic clinic;

    public PlanSteps(Clinic clinic) {
        this.clinic = clinic;
    }

    private SessionPlan plan() {
        return Clinic.TUNICA.plan(
                Clinic.TUNICA.readCase("scenario", clinic.tree().bytes()));
    }

    private List<SessionPlan.Step> steps() {
        return plan().sessions().stream()
                .flatMap(session -> session.steps().stream())
                .toList();
    }

    private SessionPlan.Step step(String ref) {
        return steps().stream()
                .filter(step -> step.ref().equals(ref))
                .findFirst()
                .orElseThrow(() -> new AssertionError(ref + " is not in the plan: " + plan().left()));
    }

    @Then("the plan takes {int} session(s)")
    public void thePlanTakes(int sessions) {
        assertEquals(sessions, plan().sessions().size());
        assertTrue(plan().proved());
    }

    @And("the work goes {word}")
    public void theWorkGoes(String order) {
        assertEquals(
                order,
                String.join(",", steps().stream().map(SessionPlan.Step::ref).toList()));
    }

    @And("{word} gets {word}")
    public void gets(String ref, String technique) {
        assertEquals(technique, step(ref).technique());
    }

    @And("{word} is done {word}")
    public void isDone(String ref, String position) {
        assertEquals(position, step(ref).position().word());
    }

    @And("{word} is left as {word}")
    public void isLeft(String ref, String leaving) {
        assertEquals(
                leaving,
                plan().left().stream()
                        .filter(left -> left.ref().equals(ref))
                        .findFirst()
                        .orElseThrow()
                        .leaving()
                        .word());
    }

    @And("{word} binds")
    public void binds(String shared) {
        assertTrue(
                plan().boundBy().stream()
                        .map(SessionPlan.Bound::shared)
                        .map(Shared::word)
                        .anyMatch(shared::equals),
                plan().boundBy().toString());
    }

    @And("no limit is felt")
    public void noLimitIsFelt() {
        assertEquals(List.of(), plan().boundBy());
    }
}
