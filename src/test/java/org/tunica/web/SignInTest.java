package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.HttpCookie;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.plan.Advice;
import org.tunica.store.Actor;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.User;
import org.tunica.store.UserState;

/** Signing in to a real server, as a browser does. */
class SignInTest {
    @TempDir
    private static Path folder;

    private static Clinic clinic;

    private static int users;

    /** A user of each test's own; every name is short and of four letters at most. */
    private String rosa = "";

    @BeforeAll
    static void open() {
        clinic = Clinic.open(folder);
    }

    @AfterAll
    static void close() {
        clinic.close();
    }

    @BeforeEach
    void user() {
        String number = Integer.toString(256 + users++, 4).substring(1);
        rosa = "ro"
                + number.replace('0', 'r').replace('1', 'o').replace('2', 's').replace('3', 'a');
        clinic.user(rosa, Role.SPECIALIST);
    }

    @Test
    void rightPassword_letsIn() throws Exception {
        Browser browser = clinic.browser();
        HttpResponse<String> answer = browser.signIn(" R" + rosa.substring(1) + " ", Clinic.PASSWORD);
        assertEquals("/", location(answer));
        HttpResponse<String> start = browser.get("/");
        assertEquals(200, start.statusCode());
        assertTrue(start.body().contains(rosa), start.body());
        assertEquals(List.of("signed-in"), acts(1));
    }

    @Test
    void everyPage_carriesTheCaution() throws Exception {
        Browser browser = clinic.browser();
        for (String page : List.of("/sign-in", "/sign-in?refused", "/signed-out", "/password/x/y")) {
            assertTrue(browser.get(page).body().contains(Advice.CAUTION), page);
        }
        browser.signIn(rosa, Clinic.PASSWORD);
        for (String page : List.of("/", "/my-password")) {
            assertTrue(browser.get(page).body().contains(Advice.CAUTION), page);
        }
    }

    @Test
    void wrongPasswordUnknownNameAndLock_lookAlike() throws Exception {
        Browser browser = clinic.browser();
        assertEquals("/sign-in?refused", location(browser.signIn(rosa, "wrong")));
        assertEquals("/sign-in?refused", location(browser.signIn("nobody", "wrong")));
        browser.signIn(rosa, "wrong");
        browser.signIn(rosa, "wrong");
        assertEquals("/sign-in?refused", location(browser.signIn(rosa, Clinic.PASSWORD)));
        assertEquals("/sign-in", location(browser.get("/")));
    }

    @Test
    void lock_ends() throws Exception {
        Browser browser = clinic.browser();
        for (int i = 0; i < Clinic.RULES.mostFailures(); i++) {
            browser.signIn(rosa, "wrong");
        }
        clinic.clock.move(Clinic.RULES.lock().minusSeconds(1));
        assertEquals("/sign-in?refused", location(browser.signIn(rosa, Clinic.PASSWORD)));
        clinic.clock.move(Duration.ofSeconds(2));
        assertEquals("/", location(browser.signIn(rosa, Clinic.PASSWORD)));
    }

    @Test
    void sessionId_changesAtSignIn() throws Exception {
        Browser browser = clinic.browser();
        browser.get("/sign-in");
        HttpCookie planted = browser.session().orElseThrow();
        browser.signIn(rosa, Clinic.PASSWORD);
        assertNotEquals(planted.getValue(), browser.session().orElseThrow().getValue());
        Browser other = clinic.browser();
        other.carry(planted);
        assertEquals("/sign-in", location(other.get("/")));
    }

    @Test
    void cookie_keepsToItself() throws Exception {
        String cookie = clinic.browser()
                .get("/sign-in")
                .headers()
                .firstValue("Set-Cookie")
                .orElseThrow();
        assertAll(
                () -> assertTrue(cookie.contains("HttpOnly"), cookie),
                () -> assertTrue(cookie.contains("SameSite=Strict"), cookie),
                () -> assertTrue(cookie.contains("Path=/"), cookie));
    }

    @Test
    void idleSession_ends() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        browser.get("/");
        clinic.clock.move(Clinic.RULES.idle().minusSeconds(1));
        assertEquals(200, browser.get("/").statusCode());
        clinic.clock.move(Clinic.RULES.idle().plusSeconds(1));
        assertEquals("/sign-in", location(browser.get("/")));
    }

    @Test
    void longSession_ends() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        browser.get("/");
        long steps = Clinic.RULES.longest().toMinutes() / 10;
        for (long i = 1; i < steps; i++) {
            clinic.clock.move(Duration.ofMinutes(10));
            assertEquals(200, browser.get("/").statusCode(), "step " + i);
        }
        clinic.clock.move(Duration.ofMinutes(10));
        assertEquals("/sign-in", location(browser.get("/")));
    }

    @Test
    void signOut_endsTheSession() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        HttpCookie cookie = browser.session().orElseThrow();
        assertTrue(location(browser.fillIn("/", "/sign-out", Map.of())).endsWith("/signed-out"));
        Browser other = clinic.browser();
        other.carry(cookie);
        assertEquals("/sign-in", location(other.get("/")));
        assertEquals(List.of("signed-out"), acts(1));
    }

    @Test
    void formWithoutToken_isRefused() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        assertEquals(403, browser.form("/sign-out", "forged", Map.of()).statusCode());
        assertEquals(200, browser.get("/").statusCode());
        HttpResponse<String> json =
                browser.send(browser.at("/api/cases/larkspur-01/advice").POST(BodyPublishers.noBody()));
        assertEquals(403, json.statusCode());
    }

    @Test
    void otherRoles_countFromTheNextRequestOn() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        assertEquals(200, browser.get("/api/cases").statusCode());
        User user = clinic.store.users().find(rosa).orElseThrow();
        clinic.store.users().save(new Actor("ada"), user.with(Set.of(Role.RULE_AUTHOR)));
        assertEquals(403, browser.get("/api/cases").statusCode());
    }

    @Test
    void whoeverLeft_isOutAtOnce() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        User user = clinic.store.users().find(rosa).orElseThrow();
        clinic.store.users().save(new Actor("ada"), user.in(UserState.LEFT));
        assertEquals(401, browser.get("/api/cases").statusCode());
        assertEquals("/sign-in?refused", location(browser.signIn(rosa, Clinic.PASSWORD)));
    }

    @Test
    void changedPassword_endsEverySessionWithTheOldOne() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        Browser elsewhere = clinic.signedIn(rosa);
        String next = "nine loud geese flying";
        HttpResponse<String> wrong =
                browser.fillIn("/my-password", Map.of("old", "not this", "password", next, "again", next));
        assertEquals(422, wrong.statusCode());
        assertTrue(wrong.body().contains("The old password is wrong."), wrong.body());
        HttpResponse<String> done =
                browser.fillIn("/my-password", Map.of("old", Clinic.PASSWORD, "password", next, "again", next));
        assertEquals(200, done.statusCode());
        assertEquals("/sign-in", location(elsewhere.get("/")));
        assertEquals("/", location(clinic.browser().signIn(rosa, next)));
    }

    @Test
    void poorPassword_isRefusedWithEveryReason() throws Exception {
        Browser browser = clinic.signedIn(rosa);
        String body = browser.fillIn("/my-password", Map.of("old", Clinic.PASSWORD, "password", rosa, "again", rosa))
                .body();
        assertAll(
                () -> assertTrue(body.contains("at least 12 characters"), body),
                () -> assertTrue(body.contains("must not hold the user name"), body),
                () -> assertTrue(body.contains("at least 5 different characters"), body));
    }

    @Test
    void headers_keepBrowsersInBounds() throws Exception {
        HttpResponse<String> page = clinic.browser().get("/sign-in");
        String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
        assertAll(
                () -> assertTrue(policy.startsWith("default-src 'self';"), policy),
                () -> assertFalse(policy.contains("unsafe"), policy),
                () -> assertTrue(policy.contains("frame-ancestors 'none'"), policy),
                () -> assertEquals("nosniff", header(page, "X-Content-Type-Options")),
                () -> assertEquals("no-referrer", header(page, "Referrer-Policy")),
                () -> assertTrue(header(page, "Cache-Control").contains("no-store")),
                () -> assertFalse(page.body().contains("<script"), page.body()),
                () -> assertFalse(page.body().contains("style="), page.body()));
    }

    private List<String> acts(int most) {
        return clinic.store.audit().newest(Page.newest(most)).stream()
                .map(row -> row.act())
                .toList();
    }

    private static String header(HttpResponse<String> answer, String name) {
        return answer.headers().firstValue(name).orElse("");
    }

    private static String location(HttpResponse<String> answer) {
        String location = answer.headers().firstValue("Location").orElse("stays at " + answer.statusCode());
        return location.replaceFirst("^http://127.0.0.1:\\d+", "");
    }
}
