package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.tunica.CaseTree;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.DocumentKind;
import org.tunica.store.FeedbackBook;
import org.tunica.store.KeptDocument;
import org.tunica.store.Page;

/**
 * The pages on which a case is worked with once it is advised on: energy window, sessions, records, follow-up, meeting. One
 * server for all; each test has a case of its own.
 */
@ExtendWith(SharedClinic.class)
class WorkingPagesTest {
    private static final String SPECIALIST = SharedClinic.SPECIALIST;
    private static final String MEMBER = SharedClinic.MEETING_MEMBER;
    private static final String DEMO = "straight-thigh-trunk";
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(60);
    private static final Actor PUT_IN = new Actor("test");
    private static final Pattern MEETING = Pattern.compile("/meeting/packets/(m-[0-9a-f]{12})");

    private static Clinic clinic;

    @BeforeAll
    static void meet() {
        clinic = SharedClinic.clinic();
    }

    private static String kept(String caseRef) {
        return kept(CaseTree.demo(DEMO), caseRef);
    }

    private static String kept(CaseTree tree, String caseRef) {
        String json = new String(tree.set("caseRef", caseRef).bytes(), StandardCharsets.UTF_8);
        clinic.store.cases().save(PUT_IN, caseRef, Cases.NONE, json);
        return caseRef;
    }

    private static List<KeptDocument> documents(String caseRef, DocumentKind kind) {
        return clinic.store.documents().of(caseRef, kind);
    }

    private static String words(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void aMovedSettingIsComputedAndTheLinearEnergyStandsBesideItsPowerAndPullback() throws Exception {
        Browser browser = clinic.signedIn(MEMBER);
        String at = "/cases/" + kept("window-1") + "/window/L1/rf-bipolar-pullback";
        String part = browser.get(at + "/point?powerW=11&pullbackSPerCm=7.5").body();
        assertTrue(part.contains("11 W, pullback 7.5 s/cm, which makes 83 J/cm"), part);
        String moved = browser.get(at + "?powerW=11&pullbackSPerCm=7.5&move=more-power")
                .body();
        assertTrue(moved.contains("11.5 W, pullback 7.5 s/cm, which makes 86 J/cm"), moved);
        assertFalse(moved.contains("style="));
        long rows = clinic.store.audit().head().number();
        browser.get(at + "/point?powerW=12&pullbackSPerCm=7.5");
        String map = browser.get(at + "/map?powerW=11&pullbackSPerCm=7.5").body();
        assertEquals(rows, clinic.store.audit().head().number(), "a moved setting is no new look at the case");
        assertTrue(map.contains("id=\"marker\" visibility=\"visible\""), map);
        String faulty = browser.get(at + "?powerW=much&pullbackSPerCm=900").body();
        assertTrue(faulty.contains("much") && faulty.contains("900"), faulty);
    }

    @Test
    void whereThereIsNoWindowAPlainSentenceSaysWhy() throws Exception {
        Browser browser = clinic.signedIn(SPECIALIST);
        String caseRef = kept(CaseTree.demo(DEMO).set("limbs.0.segments.0.wallThicknessMm", null), "window-2");
        HttpResponse<String> wall = browser.get("/cases/" + caseRef + "/window/L1/laser-1470-radial");
        assertEquals(422, wall.statusCode());
        assertTrue(wall.body().contains("is not recorded; the window needs it"), wall.body());
        HttpResponse<String> foam = browser.get("/cases/" + caseRef + "/window/L1/foam-polidocanol");
        assertTrue(foam.body().contains("is no heat device"), foam.body());
        String cycles = browser.get("/cases/" + kept("window-3") + "/window/L1/rf-segmental-7cm")
                .body();
        assertTrue(cycles.contains("leaves neither power nor pullback to choose"), cycles);
    }

    @Test
    void aPlanIsKeptAndWhatWasDeliveredIsRecordedAgainstIt() throws Exception {
        Browser browser = clinic.signedIn(SPECIALIST);
        String caseRef = kept("deliver-1");
        keepPlan(browser, caseRef);
        assertTrue(browser.get("/cases/" + caseRef + "/plan").body().contains("NOT KEPT"));
        String at = "/cases/" + caseRef + "/plan/1/sessions/1/delivered";
        Map<String, String> typed = new HashMap<>(Map.of(
                "segments[0].technique", "rf-segmental-7cm",
                "segments[0].treatedLengthCm", "36",
                "segments[0].heat.cycles", "many",
                "indication", "<b>heaviness</b>"));
        HttpResponse<String> refused = browser.fillIn(at, typed);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("its values are not confirmed"), refused.body());
        assertTrue(refused.body().contains("value=\"many\""), refused.body());
        assertTrue(refused.body().contains("&lt;b>heaviness"), refused.body());
        assertEquals(List.of(), documents(caseRef, DocumentKind.DELIVERED));
        typed.put("segments[0].heat.cycles", "2");
        typed.put("confirmed-0", "yes");
        assertEquals(303, browser.fillIn(at, typed).statusCode());
        String body =
                documents(caseRef, DocumentKind.DELIVERED).get(0).document().body();
        assertTrue(body.contains("\"cycles\" : 2"), body);
        assertFalse(body.contains("tumescent"), "what nobody recorded stands nowhere: " + body);
        String note =
                words(browser.bytes("/api/cases/" + caseRef + "/note/1?as=pdf").body());
        assertTrue(note.contains("NOT RECORDED") || note.contains("not recorded"), note);
        String papers = browser.get("/cases/" + caseRef + "/papers").body();
        assertTrue(papers.contains("/api/cases/" + caseRef + "/note/1?as=pdf"), papers);
        assertTrue(words(browser.bytes("/cases/" + caseRef + "/sheet").body()).length() > 500);
    }

    private static void keepPlan(Browser browser, String caseRef) throws Exception {
        HttpResponse<String> kept = browser.fillIn("/cases/" + caseRef + "/plan", Map.of());
        assertEquals(
                "/cases/" + caseRef + "/plan?number=1",
                kept.headers().firstValue("Location").orElseThrow());
    }

    @Test
    void ofASegmentThatWasNotDoneTheIntendedValuesAreLeftOut() throws Exception {
        Browser browser = clinic.signedIn(SPECIALIST);
        String caseRef = kept("deliver-2");
        keepPlan(browser, caseRef);
        String at = "/cases/" + caseRef + "/plan/1/sessions/1/delivered";
        Matcher length = Pattern.compile("name=\"segments\\[0]\\.treatedLengthCm\"[^>]* value=\"([^\"]+)\"")
                .matcher(browser.get(at).body());
        assertTrue(length.find(), "the length the plan intends stands in its field");
        Map<String, String> typed = Map.of(
                "segments[0].treatedLengthCm", length.group(1),
                "segments[0].notDone", "the vein could not be entered",
                "confirmed-0", "yes");
        assertEquals(303, browser.fillIn(at, typed).statusCode());
        String body =
                documents(caseRef, DocumentKind.DELIVERED).get(0).document().body();
        assertFalse(body.contains("treatedLengthCm"), body);
    }

    @Test
    void visitsAddUpAndWhatWasNotLookedAtStaysOut() throws Exception {
        Browser browser = clinic.signedIn(SPECIALIST);
        String caseRef = kept("visit-1");
        keepPlan(browser, caseRef);
        String at = "/cases/" + caseRef + "/follow-up";
        HttpResponse<String> empty = browser.fillIn(at, Map.of("daysAfter", "7"));
        assertEquals(422, empty.statusCode());
        assertTrue(empty.body().contains("holds nothing yet"), empty.body());
        Map<String, String> late = Map.of(
                "daysAfter", "42",
                "segments[0].treatedLengthCm", "38",
                "segments[0].closure", "adhesive-open-stump",
                "segments[0].openLengthCm", "2");
        assertEquals(303, browser.fillIn(at, late).statusCode());
        Map<String, String> early = new HashMap<>(late);
        early.put("daysAfter", "7");
        early.put("segments[0].openLengthCm", "500");
        HttpResponse<String> refused = browser.fillIn(at, early);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("id=\"field-segments-0-openLengthCm-fault\""), refused.body());
        early.put("segments[0].openLengthCm", "0");
        assertEquals(303, browser.fillIn(at, early).statusCode());
        List<KeptDocument> visits = documents(caseRef, DocumentKind.FOLLOW_UP);
        String last = visits.get(visits.size() - 1).document().body();
        assertTrue(last.indexOf("\"daysAfter\" : 7") < last.indexOf("\"daysAfter\" : 42"), last);
        assertTrue(last.contains("\"daysAfter\" : 7"), last);
        assertFalse(last.contains("refluxSeconds"), last);
        String course = browser.get("/cases/" + caseRef + "/papers").body();
        assertTrue(course.contains("Day 7: closed (0 of 38 cm open); reflux not recorded"), course);
        assertTrue(course.contains("nobody recorded whether anything went wrong"), course);
    }

    @Test
    void aPacketShowsNothingThatLeadsToThePerson() throws Exception {
        Browser browser = clinic.signedIn(SPECIALIST);
        String caseRef =
                kept(CaseTree.demo(DEMO).set("limbs.0.segments.0.ref", "thigh-of-Quillfeather"), "quillfeather-1961");
        String id = send(browser, caseRef, "Which way first? Mrs Quillfeather of Harbour Lane asks, wall 0.4 mm");
        String page = browser.get("/meeting/packets/" + id).body();
        String paper = words(browser.bytes("/meeting/packets/" + id + "/pdf").body());
        String agenda = browser.get("/meeting/agenda/2026-12-01").body();
        for (String shown : List.of(page, paper, agenda)) {
            String lower = shown.toLowerCase(Locale.ROOT);
            assertFalse(lower.contains("quillfeather"), shown);
            assertFalse(lower.contains("harbour"), shown);
            assertTrue(shown.contains(id), shown);
        }
        for (String shown : List.of(page, paper)) {
            assertTrue(shown.contains("0.4 mm"), shown);
            assertTrue(shown.contains("L1: LEFT leg"), shown);
            assertTrue(shown.contains("No past case has been released here yet"), shown);
            assertTrue(shown.contains("licensed specialist decides"), shown);
        }
        HttpResponse<String> nobody = browser.get("/meeting/packets/m-000000000000");
        assertEquals(404, nobody.statusCode());
    }

    private static String send(Browser browser, String caseRef, String question) throws Exception {
        HttpResponse<String> sent = browser.fillIn(
                "/cases/" + caseRef + "/meeting",
                Map.of("question", question, "because", "rare-finding", "date", "2026-12-01"));
        Matcher id = MEETING.matcher(sent.headers().firstValue("Location").orElse(sent.body()));
        assertTrue(id.find(), sent.body());
        return id.group(1);
    }

    @Test
    void aDecisionIsKeptWithItsDissentAndGovernanceHearsOfIt() throws Exception {
        Browser specialist = clinic.signedIn(SPECIALIST);
        Browser member = clinic.signedIn(MEMBER);
        String caseRef = kept("decide-1");
        String id = send(specialist, caseRef, "");
        String at = "/meeting/packets/" + id + "/decision";
        Map<String, String> typed = new HashMap<>(Map.of(
                "date", "2026-12-32",
                "decision-L1", "leave-alone",
                "reason-L1", "too little to gain",
                "agreed", "AK, LB",
                "dissent-who-0", "MN"));
        HttpResponse<String> refused = member.fillIn(at, typed);
        assertEquals(422, refused.statusCode());
        for (String fault : List.of(
                "is no day such as", "why it is not the first", "Who sees to it", "what they said belong together")) {
            assertTrue(refused.body().contains(fault), fault + " in " + refused.body());
        }
        assertTrue(
                refused.body().contains("too little to gain") && refused.body().contains("2026-12-32"));
        assertEquals(List.of(), documents(caseRef, DocumentKind.DECISION));
        typed.putAll(Map.of(
                "date", "2026-12-01",
                "why-L1", "wish-of-the-patient",
                "owner", "AK",
                "dissent-says-0", "would close it"));
        assertEquals(303, member.fillIn(at, typed).statusCode());
        KeptDocument decision = documents(caseRef, DocumentKind.DECISION).get(0);
        assertEquals(MEMBER, decision.stamp().by());
        assertTrue(decision.document().body().contains("would close it"));
        String page = specialist.get("/cases/" + caseRef + "/meeting").body();
        assertTrue(page.contains("DISSENT of MN: would close it"), page);
        FeedbackBook.Kept heard = clinic.store.feedback().newest(Page.newest(10)).stream()
                .filter(one -> one.feedback().card().equals(id + "-L1"))
                .findFirst()
                .orElseThrow();
        assertEquals("overridden", heard.feedback().outcome());
        assertFalse(heard.feedback().body().contains("too little to gain"), "words stay with the case");
        assertFalse(clinic.store.cards().one(id + "-L1").orElseThrow().rules().isEmpty());
        assertTrue(specialist.get("/meeting").body().contains(id));
    }

    @Test
    void theSpecialistMovesASettingAndKeepsAPlanByKeyboard() throws Exception {
        String caseRef = kept("journey-1");
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            screen.driver.manage().timeouts().implicitlyWait(LONGEST_WAIT);
            screen.signIn(SPECIALIST, Clinic.PASSWORD);
            screen.open("/cases/" + caseRef + "/window/L1/rf-bipolar-pullback?powerW=8&pullbackSPerCm=6");
            there(screen, "//*[@id='marker']");
            screen.driver
                    .findElement(By.cssSelector("button[value='more-power']"))
                    .sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_UP);
            there(screen, "//h2[.='8.5 W, pullback 6.25 s/cm, which makes 53 J/cm']");
            looked(screen, "window");
            screen.open("/cases/" + caseRef + "/plan");
            looked(screen, "plan");
            screen.driver.findElement(By.cssSelector("main form button")).sendKeys(Keys.ENTER);
            there(screen, "//strong[contains(.,'This is plan 1')]");
            screen.open("/cases/" + caseRef + "/plan/1/sessions/1/delivered");
            looked(screen, "delivered");
            screen.driver.findElement(By.name("confirmed-0")).sendKeys(Keys.SPACE);
            screen.driver
                    .findElement(By.cssSelector("form.case-form > p > button"))
                    .sendKeys(Keys.ENTER);
            there(screen, "//h1[contains(.,'Papers of case')]");
            looked(screen, "papers");
            screen.open("/cases/" + caseRef + "/follow-up");
            looked(screen, "follow-up");
        }
        assertEquals(1, documents(caseRef, DocumentKind.NOTE).size());
    }

    @Test
    void theMeetingGoesFromQueueToDecisionByKeyboard() throws Exception {
        String caseRef = kept("journey-2");
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            screen.driver.manage().timeouts().implicitlyWait(LONGEST_WAIT);
            screen.signIn(MEMBER, Clinic.PASSWORD);
            screen.open("/cases/" + caseRef + "/meeting");
            looked(screen, "refer");
            screen.driver
                    .findElement(By.cssSelector("input[value='second-opinion-wanted']"))
                    .sendKeys(Keys.SPACE);
            screen.driver.findElement(By.id("date")).sendKeys("2026-12-02", Keys.ENTER);
            there(screen, "//h1[contains(.,'Meeting case')]");
            looked(screen, "packet");
            screen.open("/meeting");
            looked(screen, "queue");
            screen.open("/meeting/agenda/2026-12-02");
            looked(screen, "agenda");
            screen.driver.findElement(By.cssSelector("a[href$='/decision']")).sendKeys(Keys.ENTER);
            there(screen, "//h1[contains(.,'Decision on')]");
            looked(screen, "decision");
            screen.driver
                    .findElement(By.cssSelector("input[name='decision-L1']"))
                    .sendKeys(Keys.SPACE);
            screen.driver.findElement(By.id("agreed")).sendKeys("AK");
            screen.driver.findElement(By.id("owner")).sendKeys("LB", Keys.ENTER);
            there(screen, "//li[.='Nobody dissented.']");
        }
        String decision =
                documents(caseRef, DocumentKind.DECISION).get(0).document().body();
        assertTrue(decision.contains("first-in-rank") || decision.contains("FIRST_IN_RANK"), decision);
    }

    private static void there(Screen screen, String path) {
        screen.driver.findElement(By.xpath(path));
    }

    /** Pictures for a person to look at; that nothing hinders is for {@link EveryPageTest} to say. */
    private static void looked(Screen screen, String name) throws Exception {
        screen.emulate("screen", "dark");
        screen.picture(name + "-dark");
        screen.emulate("print", "light");
        screen.picture(name + "-print");
        screen.emulate("screen", "light");
        screen.picture(name + "-light");
    }
}
