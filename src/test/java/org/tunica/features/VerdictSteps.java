package org.tunica.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.After;
import io.cucumber.java.en.Then;
import java.util.List;
import org.tunica.BlankOneOut;
import org.tunica.plan.OptionAdvice;
import org.tunica.rules.Verdict;

/** What rules say and how an option stands. */
public final class VerdictSteps {
    private final Clinic clinic;

    public VerdictSteps(Clinic clinic) {
        this.clinic = clinic;
    }

    @Then("^([A-Z]{3}-\\d{3}) (speaks|stays quiet|is in doubt)$")
    public void ruleSays(String id, String expected) {
        assertTrue(
                Clinic.TUNICA.rules().rules().stream()
                        .anyMatch(rule -> rule.id().equals(id)),
                "no rule " + id);
        assertEquals(expected, said(id), () -> id + " in " + clinic.tree().root());
    }

    private String said(String id) {
        List<Verdict> verdicts = clinic.verdicts().stream()
                .filter(verdict -> verdict.rule().id().equals(id))
                .toList();
        if (verdicts.isEmpty()) {
            return "stays quiet";
        }
        return verdicts.get(0).speaks() ? "speaks" : "is in doubt";
    }

    @Then("it stands as {word}")
    public void itStandsAs(String standing) {
        OptionAdvice option = clinic.option();
        assertEquals(standing, option.standing().word(), option::why);
    }

    @Then("it comes before {word}")
    public void itComesBefore(String other) {
        int mine = clinic.option().rank().orElse(Integer.MAX_VALUE);
        int theirs = clinic.option(other).rank().orElse(Integer.MAX_VALUE);
        assertTrue(mine < theirs, () -> "rank " + mine + " against " + theirs);
    }

    @Then("nothing is ranked")
    public void nothingIsRanked() {
        List<String> ranked = clinic.advice().segments().get(0).options().stream()
                .filter(option -> option.rank().isPresent())
                .map(OptionAdvice::technique)
                .toList();
        assertEquals(List.of(), ranked);
    }

    /** Unknown never means safe, whatever the scenario is about. */
    @After
    public void nothingLooksBetterWhenAValueIsBlanked() {
        BlankOneOut.check(Clinic.TUNICA, clinic.tree());
    }
}
