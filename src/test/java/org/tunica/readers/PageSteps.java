package org.tunica.readers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.tunica.CaseTree;
import org.tunica.store.Actor;
import org.tunica.store.Cases;

/** What every reader does: come, open, put in, press, read. */
public final class PageSteps {
    private static final Actor PUT_IN = new Actor("robin");

    private final Desk desk;

    /** Steps of somebody at the pages. */
    public PageSteps(Desk desk) {
        this.desk = desk;
    }

    @Given(
            "^(\\w+), (?:a specialist|a member of the meeting|the safety officer|the clinical lead|who writes rules), is at the pages$")
    public void isAtThePages(String name) throws Exception {
        desk.comes(name);
    }

    @Given("the demo case {word} as {string}")
    public void demoCase(String demo, String caseRef) {
        keep(PUT_IN, CaseTree.demo(demo), caseRef);
    }

    @Given("the demo case {word} as {string}, saved by wren")
    public void demoCaseOfWren(String demo, String caseRef) {
        keep(new Actor("wren"), CaseTree.demo(demo), caseRef);
    }

    @Given("the demo case {word} as {string}, its wall not recorded")
    public void demoCaseWithoutWall(String demo, String caseRef) {
        keep(PUT_IN, CaseTree.demo(demo).set("limbs.0.segments.0.wallThicknessMm", null), caseRef);
    }

    static void keep(Actor by, CaseTree tree, String caseRef) {
        String json = new String(tree.set("caseRef", caseRef).bytes(), StandardCharsets.UTF_8);
        House.clinic().store.cases().save(by, caseRef, Cases.NONE, json);
    }

    @When("the page {string} is opened")
    public void opened(String path) throws Exception {
        desk.opens(path);
    }

    @When("{string} is set to {string}")
    public void set(String label, String text) {
        desk.puts(label, text);
    }

    @When("{string} is ticked")
    public void ticked(String label) {
        desk.puts(label, "");
    }

    @When("{string} is pressed")
    public void pressed(String button) throws Exception {
        desk.presses(button);
    }

    @Then("it is refused")
    public void refused() {
        desk.refused();
    }

    @Then("it is done")
    public void done() {
        desk.done();
    }

    @Then("the page says {string}")
    public void says(String words) {
        desk.says(words);
    }

    @Then("the page does not say {string}")
    public void doesNotSay(String words) {
        assertFalse(desk.words().contains(words), desk::words);
    }

    @Then("the page is called {string}")
    public void called(String title) {
        assertTrue(desk.page().contains("<h1>" + title + "</h1>"), desk::words);
    }

    @Then("there is no button {string}")
    public void noButton(String button) {
        assertFalse(desk.words().contains(button), desk::words);
    }

    /** The words of a PDF that is there. */
    static String paper(Desk desk, String path) throws Exception {
        var answer = desk.browser().bytes(path);
        assertEquals(200, answer.statusCode(), path);
        try (PDDocument document = Loader.loadPDF(answer.body())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
