package org.tunica.readers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.datatable.DataTable;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.CaseTree;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptDocument;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the specialist alone does: type a case, choose, and read what was kept of it. */
public final class SpecialistSteps {
    private static final Pattern CARD = Pattern.compile("\"card\" : \"([^\"]+)\"");

    private static final String FIRST = "rf-segmental-7cm";

    private final Desk desk;
    private Answers before = new Answers(0, 0);

    /** Steps of a specialist at the pages. */
    public SpecialistSteps(Desk desk) {
        this.desk = desk;
    }

    @When("a new case is filled in:")
    public void filledIn(DataTable fields) throws Exception {
        desk.opens("/cases/new");
        fields.asLists().forEach(field -> desk.puts(field.get(0), field.get(1)));
    }

    @Then("{string} still holds {string}")
    public void holds(String label, String text) {
        assertEquals(text, PageForm.with(desk.page(), "Save and advise").holds(label));
    }

    @Then("no case {string} is kept")
    public void notKept(String caseRef) {
        assertTrue(House.clinic().store.cases().latest(caseRef).isEmpty());
    }

    @When("the option in place {int} is picked")
    public void picked(int place) {
        Matcher option = Pattern.compile("(?s)name=\"technique\"[^>]*>\\s*(" + place + "\\. [^<]+?)\\s*</label>")
                .matcher(desk.page());
        assertTrue(option.find(), desk::words);
        desk.puts("Which option", PageForm.words(option.group(1)));
    }

    @Given("wren, a specialist, set the first option of {string} aside")
    public void setAside(String caseRef) throws Exception {
        Desk wren = new Desk();
        wren.comes("wren");
        PageSteps.keep(new Actor("robin"), CaseTree.demo("straight-thigh-trunk"), caseRef);
        wren.opens("/cases/" + caseRef);
        new SpecialistSteps(wren).picked(2);
        wren.puts("Reason, where it is not the first option", "the patient does not want it");
        wren.presses("Keep this choice");
        wren.done();
    }

    /** The card of the choice made last for a case. */
    static String card(String caseRef) {
        List<KeptDocument> choices = House.clinic().store.documents().of(caseRef, DocumentKind.CHOICE);
        Matcher card = CARD.matcher(choices.get(choices.size() - 1).document().body());
        assertTrue(card.find());
        return card.group(1);
    }

    @Given("those who watch the rules have looked")
    public void looked() throws Exception {
        before = watched();
    }

    @Then("those who watch the rules count {int} answer more, {int} of them set aside")
    public void counted(int answers, int aside) throws Exception {
        Answers now = watched();
        assertEquals(answers, now.all() - before.all());
        assertEquals(aside, now.aside() - before.aside());
    }

    /** How many answers there were about the technique that is first in the demo case, and how many set it aside. */
    private record Answers(long all, long aside) {}

    private static Answers watched() throws Exception {
        JsonNode report = new JsonMapper()
                .readTree(House.clinic()
                        .signedIn("stefan")
                        .get("/api/governance/watch?days=30&before=90")
                        .body());
        for (JsonNode rate : report.path("overriddenByTechnique")) {
            if (rate.path("id").asString().equals(FIRST)) {
                return new Answers(
                        rate.path("answered").asLong(), rate.path("overridden").asLong());
            }
        }
        return new Answers(0, 0);
    }

    @Then("the note as PDF says {string}")
    public void noteSays(String words) throws Exception {
        Matcher note = Pattern.compile("/api/cases/[^/]+/note/\\d+\\?as=pdf").matcher(desk.page());
        assertTrue(note.find(), desk::words);
        String text = PageSteps.paper(desk, note.group());
        assertTrue(text.toLowerCase(Locale.ROOT).contains(words), text);
    }

    @Then("the sheet for the patient is a PDF that recommends nothing")
    public void sheet() throws Exception {
        Matcher sheet = Pattern.compile("/cases/[^/]+/sheet").matcher(desk.page());
        assertTrue(sheet.find(), desk::words);
        String text = PageSteps.paper(desk, sheet.group());
        assertTrue(text.length() > 500, text);
        assertFalse(text.contains("ranked") || text.contains("first choice"), text);
    }

    @Then("the room holds what {string} holds")
    public void sameRoom(String caseRef) throws Exception {
        PageForm form = PageForm.with(desk.page(), "Save and advise");
        desk.opens("/cases/" + caseRef + "/edit");
        PageForm kept = PageForm.with(desk.page(), "Save and advise");
        assertFalse(kept.under("room.").isEmpty());
        assertEquals(kept.under("room."), form.under("room."));
    }
}
