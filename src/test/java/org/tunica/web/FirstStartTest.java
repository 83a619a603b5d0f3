package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Role;
import org.tunica.store.User;

/** From a server nobody is known to, to a clinic with users. */
class FirstStartTest {
    private static final String PASSWORD = "four grey herons wade";
    private static final Map<String, String> ADA = Map.of("name", "Ada", "password", PASSWORD, "again", PASSWORD);

    @TempDir
    private Path folder;

    @Test
    void link_makesOneAdministratorOnce() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            String link = clinic.server.firstLink().orElseThrow().path();
            Browser browser = clinic.browser();
            assertEquals(200, browser.fillIn(link, ADA).statusCode());
            User ada = clinic.store.users().find("ada").orElseThrow();
            assertEquals(Set.of(Role.ADMINISTRATOR), ada.roles());
            assertEquals(404, browser.get(link).statusCode());
            assertTrue(clinic.server.firstLink().isEmpty());
            assertEquals(302, browser.signIn("ada", PASSWORD).statusCode());
            assertEquals(200, browser.get("/api/users").statusCode());
        }
    }

    @Test
    void link_endsInTime() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            String link = clinic.server.firstLink().orElseThrow().path();
            clinic.clock.move(Clinic.RULES.firstLinkLife());
            assertEquals(404, clinic.browser().get(link).statusCode());
        }
    }

    @Test
    void nextStart_givesAnotherLinkAndEndsTheOneBefore() throws Exception {
        String before;
        try (Clinic clinic = Clinic.open(folder)) {
            before = clinic.server.firstLink().orElseThrow().path();
        }
        try (Clinic clinic = Clinic.open(folder)) {
            String now = clinic.server.firstLink().orElseThrow().path();
            assertEquals(404, clinic.browser().get(before).statusCode());
            assertEquals(200, clinic.browser().get(now).statusCode());
        }
    }

    @Test
    void poorNameAndPassword_areToldAndTheLinkStays() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            String link = clinic.server.firstLink().orElseThrow().path();
            HttpResponse<String> answer = clinic.browser()
                    .fillIn(link, Map.of("name", "command-line", "password", "short", "again", "short"));
            assertEquals(422, answer.statusCode());
            assertTrue(answer.body().contains("under which the program itself acts"), answer.body());
            assertTrue(answer.body().contains("at least 12 characters"), answer.body());
            assertEquals(200, clinic.browser().fillIn(link, ADA).statusCode());
        }
    }

    @Test
    void manyWithTheLink_makeOneAdministrator() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            String link = clinic.server.firstLink().orElseThrow().path();
            List<Callable<Integer>> all = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                Browser browser = clinic.browser();
                String token = browser.token();
                Map<String, String> fields = Map.of("name", "ada" + i, "password", PASSWORD, "again", PASSWORD);
                all.add(() -> browser.form(link, token, fields).statusCode());
            }
            ExecutorService pool = Executors.newFixedThreadPool(all.size());
            List<Integer> statuses = new ArrayList<>();
            for (Future<Integer> done : pool.invokeAll(all)) {
                statuses.add(done.get());
            }
            pool.shutdown();
            assertEquals(1, Collections.frequency(statuses, 200), statuses::toString);
            assertEquals(7, Collections.frequency(statuses, 404), statuses::toString);
            assertEquals(1, clinic.store.users().all().size());
        }
    }

    @Test
    void linkForAnother_worksBesideThoseWhoAreKnown() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            clinic.user("rosa", Role.SPECIALIST);
            String link = clinic.server.linkForAnotherAdministrator().path();
            HttpResponse<String> taken =
                    clinic.browser().fillIn(link, Map.of("name", "rosa", "password", PASSWORD, "again", PASSWORD));
            assertEquals(422, taken.statusCode());
            assertTrue(taken.body().contains("There is a user of that name already."), taken.body());
            assertEquals(200, clinic.browser().fillIn(link, ADA).statusCode());
            assertEquals(404, clinic.browser().get(link).statusCode());
        }
    }

    @Test
    void usersLink_setsAPasswordOnceAndIsKeptAsADigest() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            clinic.user("ada", Role.ADMINISTRATOR);
            Browser ada = clinic.signedIn("ada");
            HttpResponse<String> added =
                    ada.json("PUT", "/api/users/rosa", "{\"roles\":[\"specialist\"]}", "If-None-Match", "*");
            assertEquals(201, added.statusCode(), added.body());
            String link = added.body().replaceAll(".*\"address\":\"http://[^/]*([^\"]*)\".*", "$1");
            String secret = link.substring(link.lastIndexOf('/') + 1);
            assertFalse(keptBytes().contains(secret));
            Browser rosa = clinic.browser();
            assertEquals(
                    "/sign-in?refused",
                    rosa.signIn("rosa", secret)
                            .headers()
                            .firstValue("Location")
                            .orElse("")
                            .replaceFirst("^http://[^/]*", ""));
            Map<String, String> fields = Map.of("password", PASSWORD, "again", PASSWORD);
            assertEquals(200, rosa.fillIn(link, fields).statusCode());
            assertEquals(404, rosa.get(link).statusCode());
            rosa.signIn("rosa", PASSWORD);
            assertEquals(200, rosa.get("/api/cases").statusCode());
        }
    }

    @Test
    void usersLink_endsInTimeAndByAnotherOne() throws Exception {
        try (Clinic clinic = Clinic.open(folder)) {
            clinic.user("ada", Role.ADMINISTRATOR);
            clinic.user("rosa", Role.SPECIALIST);
            Browser ada = clinic.signedIn("ada");
            String first = link(ada);
            String second = link(ada);
            assertEquals(404, clinic.browser().get(first).statusCode());
            assertEquals(200, clinic.browser().get(second).statusCode());
            clinic.clock.move(Clinic.RULES.linkLife().plus(Duration.ofSeconds(1)));
            assertEquals(404, clinic.browser().get(second).statusCode());
        }
    }

    private static String link(Browser administrator) throws Exception {
        return administrator
                .json("POST", "/api/users/rosa/link", "")
                .body()
                .replaceAll(".*\"address\":\"http://[^/]*([^\"]*)\".*", "$1");
    }

    private String keptBytes() throws Exception {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                all.append(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }
}
