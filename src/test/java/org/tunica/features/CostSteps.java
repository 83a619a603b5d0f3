package org.tunica.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.And;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import java.util.List;
import org.tunica.CaseTree;
import org.tunica.casefile.Criterion;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.SegmentAdvice;
import tools.jackson.databind.node.ArrayNode;

/** What a site says of its costs, and what that does to the firmness of a ranking. */
public final class CostSteps {
    private static final String CLASSES = "room.costClasses";

    private final Clinic clinic;

    public CostSteps(Clinic clinic) {
        this.clinic = clinic;
    }

    @Given("{word} is what matters most")
    public void mattersMost(String criterion) {
        clinic.tree().set("importance", List.of(criterion));
    }

    @Given("the site gives {word} no cost class")
    public void noCostClass(String technique) {
        takeOut(clinic.tree(), technique);
    }

    @Then("cost is weighed")
    public void costIsWeighed() {
        assertTrue(firmness(clinic.tree()).options().stream()
                .flatMap(option -> option.centralWeights().stream())
                .anyMatch(weight -> weight.criterion() == Criterion.LOW_COST));
    }

    @And("{word} leads less often than without cost classes")
    public void leadsLessOften(String technique) {
        assertTrue(share(clinic.tree(), technique) < share(withoutClasses(), technique));
    }

    @And("{word} leads more often than without cost classes")
    public void leadsMoreOften(String technique) {
        assertTrue(share(clinic.tree(), technique) > share(withoutClasses(), technique));
    }

    @And("{word} never leads")
    public void neverLeads(String technique) {
        assertEquals(0, share(clinic.tree(), technique));
    }

    @And("standings, points and ranks are those without cost classes")
    public void ranksAreThoseWithoutCostClasses() {
        assertEquals(ranking(withoutClasses()), ranking(clinic.tree()));
    }

    @Then("{word} leads as often as in the class high")
    public void leadsAsOftenAsInTheClassHigh(String technique) {
        CaseTree high = clinic.tree().copy();
        ((ArrayNode) high.root().at("/room/costClasses/high")).add(technique);
        assertEquals(share(high, technique), share(clinic.tree(), technique));
    }

    @And("it is said of {word} that its cost counts as high")
    public void itsCostCountsAsHigh(String technique) {
        assertTrue(option(clinic.tree(), technique).openCriteria().stream()
                .anyMatch(says -> says.contains("no cost class: taken as high")));
    }

    private CaseTree withoutClasses() {
        return clinic.tree().copy().set(CLASSES, null);
    }

    private static void takeOut(CaseTree tree, String technique) {
        for (String word : List.of("low", "middling", "high")) {
            ArrayNode listed = (ArrayNode) tree.root().at("/room/costClasses/" + word);
            List<String> rest = listed.valueStream()
                    .map(id -> id.stringValue())
                    .filter(id -> !id.equals(technique))
                    .toList();
            tree.set(CLASSES + "." + word, rest);
        }
    }

    private static SegmentAdvice segment(CaseTree tree) {
        return Clinic.TUNICA
                .advise(Clinic.TUNICA.readCase("scenario", tree.bytes()))
                .segments()
                .get(0);
    }

    private static FirmnessAdvice firmness(CaseTree tree) {
        return segment(tree).firmness().orElseThrow();
    }

    private static FirmnessAdvice.Option option(CaseTree tree, String technique) {
        return firmness(tree).options().stream()
                .filter(option -> option.technique().equals(technique))
                .findFirst()
                .orElseThrow();
    }

    private static double share(CaseTree tree, String technique) {
        return option(tree, technique).firstPlaceShare();
    }

    private static List<String> ranking(CaseTree tree) {
        return segment(tree).options().stream().map(CostSteps::line).toList();
    }

    private static String line(OptionAdvice option) {
        return option.technique() + " " + option.standing() + " " + option.score() + " " + option.rank();
    }
}
