package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import no.nav.security.mock.oauth2.MockOAuth2Server;
import no.nav.security.mock.oauth2.token.DefaultOAuth2TokenCallback;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Engine;
import org.tunica.store.Page;
import org.tunica.store.Role;

/**
 * Signing in with accounts of a hospital: the whole way by redirects, with a real provider of identities on loopback, and with
 * sessions that lie in a database.
 */
class HospitalSignInTest {
    private static final String ISSUER = "larkspur";

    @TempDir
    private Path folder;

    private String place = "";

    private final MockOAuth2Server provider = new MockOAuth2Server();
    private Clinic clinic;

    @BeforeEach
    void open() throws Exception {
        provider.start(InetAddress.getLoopbackAddress(), 0);
        place = Engine.POSTGRESQL.freshPlace(folder);
        clinic = open(false);
    }

    @AfterEach
    void close() {
        clinic.close();
        provider.shutdown();
    }

    private Clinic open(boolean localAccounts) throws Exception {
        Path secret = folder.resolve("client-secret");
        Files.writeString(secret, "of no use elsewhere\n");
        OpenIdConnect hospital = new OpenIdConnect(
                provider.issuerUrl(ISSUER).toString(),
                "tunica",
                secret.toString(),
                "sub",
                "realm.groups",
                Map.of(
                        "vein-doctors", Set.of(Role.SPECIALIST),
                        "rule-writers", Set.of(Role.RULE_AUTHOR),
                        "safety", Set.of(Role.SAFETY_OFFICER)),
                localAccounts);
        return Clinic.at(place, usual -> usual.with(hospital));
    }

    @Test
    void wholeWay_letsInWithTheRolesOfTheClaim() throws Exception {
        Browser browser = clinic.browser();
        assertEquals("/", path(signIn(browser, "vein-doctors")));
        assertEquals(200, browser.get("/api/cases").statusCode());
        assertEquals(403, browser.get("/api/audit").statusCode());
        assertTrue(browser.get("/api/session").body().contains("\"name\":\"oidc:p-17\""));
        List<String> actors = clinic.store.audit().newest(Page.newest(2)).stream()
                .map(row -> row.actor() + " " + row.act())
                .toList();
        assertEquals(List.of("oidc:p-17 viewed", "oidc:p-17 signed-in"), actors);
    }

    @Test
    void request_carriesStateNonceAndChallenge() throws Exception {
        Map<String, String> first = query(start(clinic.browser()));
        Map<String, String> second = query(start(clinic.browser()));
        for (String part : List.of("state", "nonce", "code_challenge")) {
            assertTrue(first.get(part).length() >= 43, part);
            assertNotEquals(first.get(part), second.get(part), part);
        }
        assertEquals("S256", first.get("code_challenge_method"));
        assertEquals("code", first.get("response_type"));
    }

    @Test
    void otherState_isRefused() throws Exception {
        Browser browser = clinic.browser();
        enqueue(Map.of("realm", Map.of("groups", List.of("vein-doctors"))));
        String back = back(start(browser));
        assertEquals("/sign-in?refused", path(browser.get(back.replaceAll("state=[^&]*", "state=forged"))));
        assertEquals("/sign-in", path(browser.get("/")));
    }

    /** Somebody lures a browser into finishing a sign-in that another browser began. */
    @Test
    void codeOfAnotherBrowser_isRefused() throws Exception {
        Browser victim = clinic.browser();
        String begun = start(victim);
        enqueue(Map.of("realm", Map.of("groups", List.of("vein-doctors"))));
        Map<String, String> attackers = query(back(start(clinic.browser())));
        String lure = "/login/oauth2/code/hospital?code=" + attackers.get("code") + "&state="
                + query(begun).get("state");
        assertEquals("/sign-in?refused", path(victim.get(lure)));
        assertEquals("/sign-in", path(victim.get("/")));
    }

    @Test
    void tokenOfAnotherIssuer_isRefused() throws Exception {
        Browser browser = clinic.browser();
        enqueue(Map.of("iss", "http://localhost/somebody-else", "realm", Map.of("groups", List.of("vein-doctors"))));
        assertEquals("/sign-in?refused", path(browser.get(back(start(browser)))));
    }

    @Test
    void tokenForAnotherClient_isRefused() throws Exception {
        Browser browser = clinic.browser();
        enqueue(Map.of("aud", List.of("another-client"), "realm", Map.of("groups", List.of("vein-doctors"))));
        assertEquals("/sign-in?refused", path(browser.get(back(start(browser)))));
    }

    @Test
    void unknownRole_isNoRoleAndOpensNothing() throws Exception {
        for (List<String> groups : List.of(List.of("porters"), List.<String>of())) {
            Browser browser = clinic.browser();
            assertEquals("/", path(signIn(browser, groups.toArray(String[]::new))));
            for (String address : List.of("/api/cases", "/api/audit", "/api/users")) {
                assertEquals(403, browser.get(address).statusCode(), address);
            }
            assertTrue(browser.get("/").body().contains("No role is given to you"));
        }
    }

    @Test
    void rolesThatConflict_areRefused() throws Exception {
        Browser browser = clinic.browser();
        assertEquals("/sign-in?refused", path(signIn(browser, "rule-writers", "safety")));
        assertEquals(401, browser.get("/api/audit").statusCode());
    }

    @Test
    void passwordsOfThisServer_areOffUnlessStated() throws Exception {
        clinic.user("rosa", Role.SPECIALIST);
        Browser browser = clinic.browser();
        assertFalse(browser.get("/sign-in").body().contains("type=\"password\""));
        browser.form("/sign-in", browser.token(), Map.of("name", "rosa", "password", Clinic.PASSWORD));
        assertEquals(401, browser.get("/api/cases").statusCode());
        assertTrue(clinic.server.firstLink().isEmpty());
        clinic.close();
        clinic = open(true);
        assertEquals("/", path(clinic.browser().signIn("rosa", Clinic.PASSWORD)));
    }

    @Test
    void cookie_comesBackFromTheHospitalsPage() throws Exception {
        String cookie = clinic.browser()
                .get("/sign-in")
                .headers()
                .firstValue("Set-Cookie")
                .orElse("SameSite=Lax");
        assertTrue(cookie.contains("SameSite=Lax"), cookie);
    }

    private HttpResponse<String> signIn(Browser browser, String... groups) throws Exception {
        enqueue(Map.of("realm", Map.of("groups", List.of(groups))));
        return browser.get(back(start(browser)));
    }

    private void enqueue(Map<String, Object> claims) {
        provider.enqueueCallback(
                new DefaultOAuth2TokenCallback(ISSUER, "p-17", "JWT", List.of("tunica"), claims, 3600));
    }

    private static String start(Browser browser) throws Exception {
        return browser.get("/oauth2/authorization/hospital")
                .headers()
                .firstValue("Location")
                .orElseThrow();
    }

    /** What the provider answers the browser it was sent: the way back, with a code. */
    private static String back(String toProvider) throws Exception {
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(toProvider)).build(), HttpResponse.BodyHandlers.ofString());
        URI back = URI.create(answer.headers().firstValue("Location").orElseThrow());
        return back.getRawPath() + "?" + back.getRawQuery();
    }

    private static Map<String, String> query(String address) {
        String query = address.substring(address.indexOf('?') + 1);
        return Arrays.stream(query.split("&"))
                .map(part -> part.split("=", 2))
                .collect(Collectors.toMap(part -> part[0], part -> URLDecoder.decode(part[1], StandardCharsets.UTF_8)));
    }

    private static String path(HttpResponse<String> answer) {
        return answer.headers()
                .firstValue("Location")
                .orElse("stays at " + answer.statusCode())
                .replaceFirst("^http://127.0.0.1:\\d+", "");
    }
}
