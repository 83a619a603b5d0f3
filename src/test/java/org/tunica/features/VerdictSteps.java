package org.tunica.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Then;
import java.util.List;
import java.util.Optional;
import org.tunica.plan.OptionAdvice;
import org.tunica.rules.RuleBook;
import org.tunica.rules.Verdict;

/** What rules say and how an option stands. */
public final class VerdictSteps {
    private final Clinic clinic;

    public VerdictSteps(Clinic clinic) {
        this.clinic = clinic;
    }

    @Then("^([A-Z]{3}-\\d{3}) (speaks|stays quiet|is in doubt)$")
    public void ruleSays(String id, String expected) {
        clinic.claim((scene, engine) -> {
            exists(id, engine.rules());
            assertEquals(expected, said(verdict(id, scene, engine)), () -> id + " in " + scene);
        });
    }

    /** What the rule concludes wherever it is not quiet, its limits written as numbers. */
    @Then("^([A-Z]{3}-\\d{3}) would (.+)$")
    public void ruleWould(String id, String conclusion) {
        clinic.claim((scene, engine) -> {
            exists(id, engine.rules());
            verdict(id, scene, engine)
                    .ifPresent(verdict -> assertEquals(
                            conclusion, Concluded.inNumbers(verdict.rule().conclusion()), id));
        });
    }

    private static void exists(String id, RuleBook rules) {
        assertTrue(rules.rules().stream().anyMatch(rule -> rule.id().equals(id)), "no rule " + id);
    }

    private static Optional<Verdict> verdict(String id, Scene scene, Engine engine) {
        return scene.verdicts(engine.rules()).stream()
                .filter(verdict -> verdict.rule().id().equals(id))
                .findFirst();
    }

    private static String said(Optional<Verdict> verdict) {
        return verdict.map(spoken -> spoken.speaks() ? "speaks" : "is in doubt").orElse("stays quiet");
    }

    @Then("it stands as {word}")
    public void itStandsAs(String standing) {
        clinic.claim((scene, engine) -> {
            OptionAdvice option = engine.option(scene, scene.technique());
            assertEquals(standing, option.standing().word(), option::why);
        });
    }

    @Then("it comes before {word}")
    public void itComesBefore(String other) {
        clinic.claim((scene, engine) -> {
            int mine = engine.option(scene, scene.technique()).rank().orElse(Integer.MAX_VALUE);
            int theirs = engine.option(scene, other).rank().orElse(Integer.MAX_VALUE);
            assertTrue(mine < theirs, () -> "rank " + mine + " against " + theirs);
        });
    }

    @Then("nothing is ranked")
    public void nothingIsRanked() {
        clinic.claim((scene, engine) -> {
            List<String> ranked = engine.options(scene).stream()
                    .filter(option -> option.rank().isPresent())
                    .map(OptionAdvice::technique)
                    .toList();
            assertEquals(List.of(), ranked);
        });
    }
}
