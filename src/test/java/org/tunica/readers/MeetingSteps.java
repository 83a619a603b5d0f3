package org.tunica.readers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.cucumber.datatable.DataTable;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.java.en.When;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.Tunica;
import org.tunica.store.Actor;
import org.tunica.store.FeedbackBook;
import org.tunica.store.Page;
import org.tunica.store.PastCaseState;
import org.tunica.store.Store;

/** What the meeting alone does: find hard cases, read a packet, decide. */
public final class MeetingSteps {
    private static final Actor STEWARD = new Actor("robin");
    private static final Pattern PACKET = Pattern.compile("/meeting/packets/(m-[0-9a-f]{12})");
    private static final int MOST_LOOKS = 2_000;

    private final Desk desk;
    private String packet = "";

    /** Steps of somebody of the meeting at the pages. */
    public MeetingSteps(Desk desk) {
        this.desk = desk;
    }

    @Given("{int} past cases are released")
    public void released(int count) {
        Store store = House.clinic().store;
        Tunica tunica = Tunica.shipped();
        int there = store.pastCases()
                .in(PastCaseState.RELEASED, Page.newest(Page.LONGEST))
                .size();
        for (int i = there; i < count; i++) {
            String id = "past-" + i;
            store.pastCases()
                    .bringIn(
                            STEWARD,
                            id,
                            tunica.pastCases()
                                    .toLine(tunica.pastCases()
                                            .inventedLibrary(7)
                                            .at(i)));
        }
    }

    @Given("a past case {string} is released that no rules can read")
    public void unreadable(String id) {
        House.clinic().store.pastCases().bringIn(STEWARD, id, "{\"format\":\"tunica-past/0\"}");
    }

    @When("the queue has looked at every case")
    public void looked() throws Exception {
        desk.opens("/meeting");
        for (int looks = 0; looks < MOST_LOOKS && desk.words().contains("still to be looked at"); looks++) {
            desk.opens("/meeting");
        }
        assertFalse(desk.words().contains("still to be looked at"), desk::words);
    }

    @Then("{string} is found hard because of {string}")
    public void foundHard(String caseRef, String words) {
        Matcher line = Pattern.compile("(?s)<li><a href=\"/cases/" + caseRef + "/meeting\">.*?</ul>")
                .matcher(desk.page());
        assertTrue(line.find(), desk::words);
        assertTrue(PageForm.words(line.group()).contains(words), line::group);
    }

    @When("{string} is sent with the question {string}")
    public void sent(String caseRef, String question) throws Exception {
        desk.opens("/cases/" + caseRef + "/meeting");
        desk.puts("The question to the meeting", question);
        desk.presses("Send to the meeting");
        packet();
    }

    @Given("{string} is sent to the meeting of {string}")
    public void sentFor(String caseRef, String day) throws Exception {
        desk.opens("/cases/" + caseRef + "/meeting");
        desk.puts("second opinion wanted", "");
        desk.puts("Date of the meeting, such as 2026-12-01; empty: none set", day);
        desk.presses("Send to the meeting");
        packet();
    }

    private void packet() {
        desk.done();
        Matcher found = PACKET.matcher(desk.page());
        assertTrue(found.find(), desk::words);
        packet = found.group(1);
    }

    @Then("the packet says {string}")
    public void packetSays(String words) {
        desk.says(words);
    }

    @Then("the packet does not say {string}")
    public void packetDoesNotSay(String words) throws Exception {
        assertFalse(desk.page().contains(words), desk::words);
        assertFalse(PageSteps.paper(desk, "/meeting/packets/" + packet + "/pdf").contains(words));
    }

    @Then("the packet as PDF says the same")
    public void paperSaysTheSame() throws Exception {
        String paper = PageSteps.paper(desk, "/meeting/packets/" + packet + "/pdf");
        assertTrue(paper.contains("0.4 mm") && paper.contains(packet), paper);
        assertTrue(paper.contains("licensed specialist"), paper);
    }

    @When("the agenda of {string} is opened")
    public void agenda(String day) throws Exception {
        desk.opens("/meeting/agenda/" + day);
    }

    @When("the decision on {string} is entered:")
    public void decided(String caseRef, DataTable fields) throws Exception {
        desk.opens("/meeting/packets/" + packet + "/decision");
        fields.asLists().forEach(field -> desk.puts(field.get(0), field.get(1)));
        desk.presses("Keep the decision");
    }

    @Then("those who watch the rules are told: {word}, because {string}")
    public void told(String outcome, String reason) {
        FeedbackBook.Kept heard = heard();
        assertEquals(outcome, heard.feedback().outcome());
        assertTrue(heard.feedback().body().contains(reason), heard.feedback().body());
    }

    @Then("nobody is told the words {string}")
    public void notTold(String words) {
        assertFalse(heard().feedback().body().contains(words));
    }

    private FeedbackBook.Kept heard() {
        return House.clinic().store.feedback().newest(Page.newest(Page.LONGEST)).stream()
                .filter(kept -> kept.feedback().card().equals(packet + "-L1"))
                .findFirst()
                .orElseThrow();
    }
}
