package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.tunica.Tunica;
import org.tunica.fhir.HookFeedback;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.AuditRow;
import org.tunica.store.DocumentKind;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.KeptCase;
import org.tunica.store.KeptDocument;
import org.tunica.store.Page;

/** What is chosen on the advice page is kept in the case, with its reason, and told to those who watch the rules. */
@ExtendWith(SharedClinic.class)
class ChoosingTest {
    private static final String FIRST = "rf-segmental-7cm";

    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void theFirstOption_isChosenWithoutAReason() throws Exception {
        clinic.keep("choose-01", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        assertTrue(browser.whole("/cases/choose-01").contains("1. segmental RF, 7 cm element, preferred"));
        assertEquals(
                303, choose(browser, "choose-01", Map.of("technique", FIRST)).statusCode());
        KeptDocument kept = choice("choose-01").orElseThrow();
        assertEquals(1, kept.document().caseVersion());
        assertEquals(SharedClinic.SPECIALIST, kept.stamp().by());
        assertEquals(Optional.of(FIRST), chosen("choose-01"));
        HookFeedback.Entry report = report(kept);
        assertEquals(HookFeedback.Outcome.ACCEPTED, report.outcome());
        GivenCard card = clinic.store.cards().one(report.card()).orElseThrow();
        assertEquals(FIRST, card.technique());
        assertFalse(card.rules().isEmpty());
        assertTrue(browser.whole("/cases/choose-01").contains("Chosen: segmental RF, 7 cm element, by specialist at "));
        assertEquals(
                List.of(Act.CHOICE_MADE.word()),
                clinic.store.audit().newest(Page.newest(50)).stream()
                        .filter(row -> row.subject().id().equals("choose-01/choice/1"))
                        .map(AuditRow::act)
                        .map(Object::toString)
                        .toList());
    }

    @Test
    void anotherOption_needsAReason_andWhatWasTypedStays() throws Exception {
        clinic.keep("choose-02", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        browser.whole("/cases/choose-02");
        HttpResponse<String> refused = choose(
                browser, "choose-02", Map.of("technique", "laser-1470-radial", "words", "the wave <probe> is away"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Say why it is not the first option"), refused.body());
        assertTrue(refused.body().contains("the wave &lt;probe&gt; is away"), refused.body());
        assertTrue(refused.body().contains("value=\"laser-1470-radial\" checked"), refused.body());
        HttpResponse<String> unknown =
                choose(browser, "choose-02", Map.of("technique", "mechanochemical", "reason", "action-completed"));
        assertEquals(422, unknown.statusCode(), "an excluded option is not there to be chosen");
        assertTrue(choice("choose-02").isEmpty());
        assertEquals(1, latest("choose-02").version());
    }

    @Test
    void anotherOptionWithItsReason_isAnOverrideForThoseWhoWatch() throws Exception {
        clinic.keep("choose-03", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        browser.whole("/cases/choose-03");
        int before = clinic.store.feedback().newest(Page.newest(100)).size();
        Map<String, String> sent = Map.of(
                "technique", "laser-1470-radial", "reason", "device-not-in-house", "words", "in repair until May");
        assertEquals(303, choose(browser, "choose-03", sent).statusCode());
        assertEquals(Optional.of("laser-1470-radial"), chosen("choose-03"));
        HookFeedback.Entry report = report(choice("choose-03").orElseThrow());
        assertEquals(HookFeedback.Outcome.OVERRIDDEN, report.outcome());
        assertEquals(
                Optional.of("device-not-in-house"),
                report.reason().orElseThrow().code());
        assertEquals(
                before + 1, clinic.store.feedback().newest(Page.newest(100)).size());
        String watch = browser.get("/api/governance/watch").body();
        assertTrue(watch.contains("device-not-in-house"), watch);
        assertFalse(watch.contains("in repair until May"), watch);
        String page = browser.whole("/cases/choose-03");
        assertTrue(page.contains("Reason: the device or drug is not in the house today (in repair until May)."), page);
    }

    @Test
    void noneOfThese_takesAnEarlierChoiceBack() throws Exception {
        clinic.keep("choose-04", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        browser.whole("/cases/choose-04");
        choose(browser, "choose-04", Map.of("technique", FIRST));
        assertEquals(Optional.of(FIRST), chosen("choose-04"));
        Map<String, String> sent = Map.of("technique", "none-of-these", "reason", "patient-refuses", "seen", "2");
        assertEquals(303, choose(browser, "choose-04", sent).statusCode());
        assertEquals(Optional.empty(), chosen("choose-04"));
        assertTrue(choice("choose-04").orElseThrow().document().body().contains("patient-refuses"));
    }

    @Test
    void whoeverChoosesOnAnOlderVersion_isToldAndNothingIsKept() throws Exception {
        clinic.keep("choose-05", "straight-thigh-trunk");
        clinic.keep(new Actor("robin"), "choose-05", "vein-in-spasm", 1);
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        HttpResponse<String> late = choose(browser, "choose-05", Map.of("technique", FIRST));
        assertEquals(409, late.statusCode());
        assertTrue(late.body().contains("nothing was written"), late.body());
        assertTrue(choice("choose-05").isEmpty());
    }

    private static HttpResponse<String> choose(Browser browser, String caseRef, Map<String, String> fields)
            throws Exception {
        Map<String, String> sent = new LinkedHashMap<>(Map.of("seen", "1"));
        sent.putAll(fields);
        return browser.fillIn("/cases/new", "/cases/" + caseRef + "/choices/L1", sent);
    }

    private Optional<KeptDocument> choice(String caseRef) {
        return clinic.store.documents().of(caseRef, DocumentKind.CHOICE).stream()
                .reduce((one, next) -> next);
    }

    private KeptCase latest(String caseRef) {
        return clinic.store.cases().latest(caseRef).orElseThrow();
    }

    private Optional<String> chosen(String caseRef) {
        byte[] json = latest(caseRef).json().getBytes(StandardCharsets.UTF_8);
        return Tunica.shipped()
                .readCase("case", json)
                .limbs()
                .get(0)
                .segments()
                .get(0)
                .chosen();
    }

    /** The report of the card the choice names, read as one of a record system is. */
    private HookFeedback.Entry report(KeptDocument choice) {
        String card = choice.document().body().replaceAll("(?s).*\"card\" : \"([^\"]+)\".*", "$1");
        List<FeedbackBook.Kept> reports = clinic.store.feedback().of(card);
        assertEquals(1, reports.size(), choice.document().body());
        byte[] body = reports.get(0).feedback().body().getBytes(StandardCharsets.UTF_8);
        return HookFeedback.read("report", body).entries().get(0);
    }
}
