package org.tunica.readers;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the team that governs the rules alone does: read rules, judge answers, change a number. */
public final class GovernanceSteps {
    private final Desk desk;
    private String change = "";

    /** Steps of somebody of the team at the pages. */
    public GovernanceSteps(Desk desk) {
        this.desk = desk;
    }

    @Given("release 1.0.0 is in force and release 1.1.0 is approved")
    public void releases() {
        House.releases();
    }

    @Given("release {word} took its place")
    public void tookItsPlace(String version) {
        House.releases().approve(version);
        House.releases().activate(version);
        House.clinic().clock.move(Duration.ofMinutes(5));
    }

    @When("the way {string} is taken")
    public void taken(String words) throws Exception {
        Matcher way = Pattern.compile(
                        "<a class=\"button\" href=\"([^\"]+)\">" + Pattern.quote(words) + " \\.\\.\\.</a>")
                .matcher(desk.page());
        assertTrue(way.find(), desk::words);
        desk.opens(way.group(1));
    }

    @Then("every boundary of the rule is as its words say")
    public void boundaries() {
        String tried = desk.page().substring(desk.page().indexOf("At its boundaries"));
        assertTrue(tried.contains("<td>yes</td>"), desk::words);
        assertFalse(tried.contains("<strong>NO</strong>"), desk::words);
    }

    @Then("{string} is listed as feeding {string}")
    public void feeding(String number, String rule) {
        Matcher row = Pattern.compile("(?s)<tr><th scope=\"row\"><code>" + Pattern.quote(number) + "</code>.*?</tr>")
                .matcher(desk.page());
        assertTrue(row.find(), desk::words);
        assertTrue(PageForm.words(row.group()).contains(rule), row::group);
    }

    @When("the answer about {string} is found right, because {string}")
    public void foundRight(String caseRef, String because) throws Exception {
        String card = SpecialistSteps.card(caseRef);
        int at = desk.page().indexOf("aria-label=\"Card " + card + "\"");
        assertTrue(at > 0, desk::words);
        PageForm form = PageForm.with(desk.page().substring(at), "Keep what I find");
        form.set("What was done was", "right");
        form.set("Because", because);
        desk.sends(form);
    }

    @When("the number {string} is opened and set to {string}")
    public void number(String number, String value) throws Exception {
        if (change.isEmpty()) {
            Matcher found = Pattern.compile("/governance/changes/(\\d{4})").matcher(desk.page());
            assertTrue(found.find(), desk::words);
            change = found.group(1);
        }
        desk.opens("/governance/changes/" + change + "/number?id=" + number);
        desk.puts("Value, in mm", value);
        desk.presses("Save the number");
    }
}
