package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.tunica.proposal.WorkingCopy;
import org.tunica.releases.FirstRelease;
import org.tunica.signing.Purpose;
import org.tunica.signing.SigningRole;
import org.tunica.signing.Statement;
import org.tunica.store.Role;

/**
 * The governance team at work on a real server, in a real browser: anna writes, rosa reviews, clara is clinical lead, stefan
 * safety officer. All invented. That no page hinders anybody is for {@link EveryPageTest} to say.
 */
class GovernanceJourneyTest {
    private static final String CHANGES = "/governance/changes";
    private static final int MOST_GLANCES = 20_000;
    private static final String RELEASE = "/governance/releases/1.1.0";

    @TempDir
    private static Path folder;

    private static Clinic clinic;
    private static FirstRelease first;

    @BeforeAll
    static void open() {
        clinic = Clinic.open(folder);
        clinic.user("anna", Role.RULE_AUTHOR);
        clinic.user("ben", Role.RULE_AUTHOR);
        clinic.user("rosa", Role.SPECIALIST);
        clinic.user("clara", Role.CLINICAL_LEAD);
        clinic.user("stefan", Role.SAFETY_OFFICER);
        first = FirstRelease.inForce(clinic.store, clinic.clock);
        clinic.clock.move(Duration.ofHours(1));
    }

    @AfterAll
    static void close() {
        clinic.close();
    }

    @Test
    void aChangeBecomesARelease_isPutInForceAndRolledBack() throws Exception {
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            String number = aChangeIsWrittenCheckedAndHandedIn(screen);
            itIsReplayedAndBuilt(screen, number);
            itIsSignedByThoseWhoMay(screen);
            itIsPutInForceAndRolledBack(screen);
            whatWasDoneWithACardIsJudged(screen);
        }
    }

    private static String aChangeIsWrittenCheckedAndHandedIn(Screen screen) throws Exception {
        screen.signIn("anna", Clinic.PASSWORD);
        go(screen, CHANGES);
        type(screen, "title", "A wider gap to the skin");
        type(screen, "initials", "A");
        press(screen, "Start");
        assertTrue(screen.text().contains("must be 2 to 4 capitals"), screen.text());
        assertEquals(
                "A wider gap to the skin",
                screen.driver.findElement(By.id("title")).getAttribute("value"));
        type(screen, "initials", "AK");
        press(screen, "Start");
        String number = screen.driver.getCurrentUrl().replaceAll(".*/", "");
        assertTrue(screen.text().contains("with release 1.0.0"), screen.text());
        type(screen, "number-id", "heat.skin-gap.min");
        press(screen, "Open the number");
        type(screen, "value", "six");
        press(screen, "Save the number");
        assertTrue(screen.text().contains("must be a number such as 5"), screen.text());
        assertEquals("six", screen.driver.findElement(By.id("value")).getAttribute("value"));
        type(screen, "value", "6");
        screen.picture("number-light");
        press(screen, "Save the number");
        aRuleIsFormed(screen, number);
        aFaultyTextIsKeptWithItsFaultAtItsLine(screen, number);
        type(screen, "reason", "a burn at five millimetres and a half, invented");
        press(screen, "Write the reason and fill the record");
        follow(screen, "Run the checks");
        assertTrue(screen.text().contains("Nothing bars it"), screen.text());
        assertTrue(screen.text().contains("value: was 5 mm, is 6 mm"), screen.text());
        screen.picture("change-light");
        screen.emulate("screen", "dark");
        screen.picture("change-dark");
        screen.emulate("print", "light");
        screen.picture("change-print");
        screen.emulate("screen", "light");
        press(screen, "Check and hand in");
        assertTrue(screen.text().contains("in review, handed in 1 time"), screen.text());
        return number;
    }

    /** A comparison chosen and chosen back: what the form writes is what the file said. */
    private static void aRuleIsFormed(Screen screen, String number) throws Exception {
        Path file = folder.resolve("changes").resolve(number).resolve("rules/2-exclusions/heat-near-skin.rule");
        String before = Files.readString(file);
        for (String comparison : List.of("is at most", "is less than")) {
            go(screen, CHANGES + "/" + number + "/rule?id=EXC-007");
            screen.driver
                    .findElement(By.xpath("//select[@id = '1.comparison']/option[. = '" + comparison + "']"))
                    .click();
            press(screen, "Save the rule");
            assertTrue(Files.readString(file).contains("the depth to the skin " + comparison + " limit"), comparison);
        }
        assertEquals(blankless(before), blankless(Files.readString(file).replace("change " + number, "change 0003")));
        go(screen, CHANGES + "/" + number + "/text?path=rules/2-exclusions/heat-near-skin.rule");
        set(screen, screen.driver.findElement(By.id("text")), before);
        press(screen, "Save the file");
    }

    /** Lines break where no particular author would break them. */
    private static String blankless(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static void aFaultyTextIsKeptWithItsFaultAtItsLine(Screen screen, String number) throws Exception {
        String path = "rules/2-exclusions/heat-near-skin.rule";
        go(screen, CHANGES + "/" + number + "/text?path=" + path);
        WebElement text = screen.driver.findElement(By.id("text"));
        String was = text.getAttribute("value");
        set(screen, text, was.replace("is less than limit", "is lesser than limit"));
        press(screen, "Save the file");
        assertTrue(screen.text().contains("Line 6: "), screen.text());
        assertTrue(screen.text().contains("the depth to the skin is lesser than limit"), screen.text());
        screen.picture("text-light");
        assertTrue(Files.readString(folder.resolve("changes").resolve(number).resolve(path))
                .contains("lesser"));
        set(screen, screen.driver.findElement(By.id("text")), was);
        press(screen, "Save the file");
        assertFalse(screen.text().contains("Faults in this file"), screen.text());
        go(screen, CHANGES + "/" + number);
        assertEquals(
                "anna",
                WorkingCopy.in(folder.resolve("changes").resolve(number))
                        .opening()
                        .author());
    }

    private static void itIsReplayedAndBuilt(Screen screen, String number) throws Exception {
        type(screen, "invented", "0");
        press(screen, "Start the replay");
        // the page follows the replay by itself; only its part about the replay is taken over, so nothing typed is lost
        type(screen, "because", "typed meanwhile");
        for (int looks = 0; looks < MOST_GLANCES && !replayed(screen); looks++) {}
        assertEquals(
                "typed meanwhile", screen.driver.findElement(By.id("because")).getAttribute("value"));
        follow(screen, "What the replay found");
        assertTrue(screen.text().contains("15 cases with 20 segments"), screen.text());
        assertTrue(screen.text().contains("Held against\n1.0.0 (active, "), screen.text());
        go(screen, CHANGES + "/" + number);
        type(screen, "version", "1.0.0");
        press(screen, "Build the release");
        assertTrue(screen.text().contains("is not above 1.0.0"), screen.text());
        type(screen, "version", "1.1.0");
        press(screen, "Build the release");
        assertTrue(screen.text().contains("Release 1.1.0: draft."), screen.text());
        assertFalse(screen.text().contains("Hand in my signature"), "an author signs nothing");
        follow(screen, "Hand over to review");
        press(screen, "Hand over to review");
        assertTrue(screen.text().contains("Release 1.1.0: in review."), screen.text());
        assertFalse(screen.text().contains("Hand in my signature"), "an author signs nothing");
        Browser anna = clinic.signedIn("anna");
        assertEquals(403, anna.json("POST", RELEASE + "/by-lead/activation", "").statusCode());
    }

    private static boolean replayed(Screen screen) {
        return !screen.driver.findElements(By.linkText("What the replay found")).isEmpty();
    }

    private static void itIsSignedByThoseWhoMay(Screen screen) throws Exception {
        as(screen, "rosa");
        signs(screen, "rosa", SigningRole.REVIEWER, "clara");
        assertTrue(screen.text().contains("must be who is signed in"), screen.text());
        signs(screen, "rosa", SigningRole.REVIEWER, "rosa");
        assertTrue(screen.text().contains("rosa as reviewer"), screen.text());
        as(screen, "clara");
        signs(screen, "clara", SigningRole.CLINICAL_LEAD, "clara");
        assertTrue(screen.text().contains("no safety officer has signed it"), screen.text());
        as(screen, "stefan");
        signs(screen, "stefan", SigningRole.SAFETY_OFFICER, "stefan");
        assertTrue(screen.text().contains("Release 1.1.0: approved."), screen.text());
        assertFalse(screen.text().contains("Put in force"), "the safety officer puts nothing in force");
    }

    /** Signs on a machine elsewhere exactly the digest the page names. */
    private static void signs(Screen screen, String reader, SigningRole role, String hand) throws Exception {
        go(screen, RELEASE);
        screen.picture("sign-" + reader);
        String command = screen.driver
                .findElement(By.xpath("//pre[contains(., '--as " + role.word() + " ')]"))
                .getText();
        String digest = command.replaceAll("(?s).*--digest (\\S+).*", "$1");
        Purpose purpose = role == SigningRole.REVIEWER ? Purpose.ACKNOWLEDGE_REPLAY : Purpose.SIGN_OFF;
        Statement statement = new Statement(purpose, "1.1.0", digest, hand, role, "k1", first.now());
        set(
                screen,
                screen.driver.findElement(By.id("signature")),
                first.hand(hand).sign(statement).tree().toString());
        press(screen, "Hand in my signature");
    }

    private static void itIsPutInForceAndRolledBack(Screen screen) throws Exception {
        as(screen, "clara");
        go(screen, RELEASE);
        follow(screen, "Put in force now");
        assertTrue(screen.text().contains("Release 1.0.0 gives way to release 1.1.0"), screen.text());
        assertTrue(screen.text().contains("value: was 5 mm, is 6 mm"), screen.text());
        press(screen, "Put in force now");
        assertTrue(screen.text().contains("active, IN FORCE since"), screen.text());
        clinic.clock.move(Duration.ofMinutes(5));
        as(screen, "stefan");
        go(screen, RELEASE);
        follow(screen, "Roll back");
        assertTrue(screen.text().contains("Release 1.0.0 is in force again at once."), screen.text());
        type(screen, "reason", "it warned too often");
        press(screen, "Roll back");
        assertTrue(screen.text().contains("Release 1.1.0: retired."), screen.text());
        go(screen, "/governance/releases");
        assertTrue(screen.text().contains("Release 1.0.0 is in force."), screen.text());
        screen.picture("releases-light");
        go(screen, "/governance/rules/EXC-007");
        assertTrue(screen.text().contains("features/2-exclusions/heat-near-skin.feature"), screen.text());
    }

    private static void whatWasDoneWithACardIsJudged(Screen screen) throws Exception {
        FilledClinic.report(clinic);
        go(screen, "/governance/feedback");
        assertTrue(screen.text().contains("Nobody has judged it yet."), screen.text());
        screen.driver.findElement(By.cssSelector("input[value='appropriate']")).click();
        type(screen, "because-card-1", "the patient said so before");
        press(screen, "Keep what I find");
        assertTrue(screen.text().contains("the patient said so before"), screen.text());
        screen.picture("feedback-light");
    }

    @Test
    void anotherAuthor_readsAndDoesNotEdit() throws Exception {
        Browser anna = clinic.signedIn("anna");
        String made = anna.fillIn(CHANGES, java.util.Map.of("title", "Hers", "initials", "AK"))
                .headers()
                .firstValue("Location")
                .orElseThrow();
        Browser ben = clinic.signedIn("ben");
        assertEquals(200, ben.get(made).statusCode());
        var refused = ben.fillIn(
                made,
                made + "/text",
                java.util.Map.of("path", "rules/x.rule", "seen", org.tunica.workroom.Draft.mark(""), "text", "x"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("its author alone edits it"), refused.body());
        var outside = anna.fillIn(
                made,
                made + "/text",
                java.util.Map.of(
                        "path", "rules/../../x.rule", "seen", org.tunica.workroom.Draft.mark(""), "text", "x"));
        assertEquals(422, outside.statusCode());
        assertTrue(outside.body().contains("is no name of a file here"), outside.body());
        var stale = anna.fillIn(
                made,
                made + "/text",
                java.util.Map.of("path", "knowledge/limits/distances.yaml", "seen", "other", "text", "typed"));
        assertEquals(422, stale.statusCode());
        assertTrue(
                stale.body().contains("was changed meanwhile") && stale.body().contains("typed"), stale.body());
        assertEquals(403, clinic.signedIn("stefan").json("POST", CHANGES, "").statusCode());
    }

    private static void as(Screen screen, String name) {
        screen.driver.manage().deleteAllCookies();
        screen.signIn(name, Clinic.PASSWORD);
    }

    private static void go(Screen screen, String path) {
        screen.open(path);
    }

    private static void type(Screen screen, String id, String text) {
        WebElement field = screen.driver.findElement(By.id(id));
        field.clear();
        field.sendKeys(text);
    }

    private static void set(Screen screen, WebElement field, String text) {
        screen.driver.executeScript("arguments[0].value = arguments[1]", field, text);
    }

    private static void follow(Screen screen, String startOfLink) {
        screen.leaves(
                () -> screen.driver.findElement(By.partialLinkText(startOfLink)).click());
    }

    /** Presses a button and comes back when the page it stood on is gone. */
    private static void press(Screen screen, String button) {
        screen.leaves(() -> screen.driver
                .findElement(By.xpath("//button[normalize-space() = '" + button + "']"))
                .click());
    }
}
