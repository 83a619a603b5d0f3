package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Role;

/** What an administrator does with users. */
class UsersTest {
    @TempDir
    private Path folder;

    private Clinic clinic;
    private Browser ada;

    @BeforeEach
    void open() throws Exception {
        clinic = Clinic.open(folder);
        clinic.user("ada", Role.ADMINISTRATOR);
        clinic.user("rosa", Role.SPECIALIST);
        ada = clinic.signedIn("ada");
    }

    @AfterEach
    void close() {
        clinic.close();
    }

    @Test
    void list_tellsEverythingButPasswords() throws Exception {
        String users = ada.get("/api/users").body();
        assertTrue(users.contains("\"name\":\"rosa\""), users);
        assertTrue(users.contains("\"roles\":[\"specialist\"]"), users);
        assertFalse(users.contains("bcrypt"), users);
    }

    @Test
    void rolesOfOneWhoSigns_areRefusedToOneWhoWrites() throws Exception {
        HttpResponse<String> answer = change("{\"roles\":[\"rule-author\",\"safety-officer\",\"clinical-lead\"]}");
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("whoever writes rules must not sign them"), answer.body());
        assertTrue(answer.body().contains("one person would then sign for two"), answer.body());
        assertEquals(
                Set.of(Role.SPECIALIST),
                clinic.store.users().find("rosa").orElseThrow().roles());
    }

    @Test
    void faultyUser_getsEveryFaultWithItsPlace() throws Exception {
        HttpResponse<String> answer = change("{\"roles\":[\"surgeon\"],\"state\":\"asleep\",\"x\":1}");
        assertEquals(422, answer.statusCode());
        for (String place : new String[] {"$.roles[0]", "$.state", "$.x"}) {
            assertTrue(answer.body().contains("\"place\":\"" + place + "\""), answer.body());
        }
    }

    @Test
    void changeOfWhatSomebodyElseChanged_isRefused() throws Exception {
        String tag = ada.get("/api/users/rosa").headers().firstValue("ETag").orElseThrow();
        assertEquals(200, put(tag, "{\"roles\":[\"meeting-member\"]}").statusCode());
        assertEquals(412, put(tag, "{\"roles\":[\"rule-author\"]}").statusCode());
        assertEquals(428, ada.json("PUT", "/api/users/rosa", "{\"roles\":[]}").statusCode());
        assertEquals(400, put("rosa", "{\"roles\":[]}").statusCode());
    }

    @Test
    void onlyAdministrator_cannotBeLost() throws Exception {
        String tag = ada.get("/api/users/ada").headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> answer =
                ada.json("PUT", "/api/users/ada", "{\"roles\":[\"specialist\"]}", "If-Match", tag);
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("is the only administrator"), answer.body());
        assertEquals(200, ada.get("/api/users").statusCode());
    }

    @Test
    void oddName_isToldInWords() throws Exception {
        HttpResponse<String> answer = ada.json("PUT", "/api/users/Rosa%20May", "{\"roles\":[]}", "If-None-Match", "*");
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("must start with a lower-case letter"), answer.body());
    }

    @Test
    void nameThatIsTaken_isRefused() throws Exception {
        assertEquals(
                412,
                ada.json("PUT", "/api/users/rosa", "{\"roles\":[]}", "If-None-Match", "*")
                        .statusCode());
    }

    private HttpResponse<String> change(String json) throws Exception {
        return put(ada.get("/api/users/rosa").headers().firstValue("ETag").orElseThrow(), json);
    }

    private HttpResponse<String> put(String tag, String json) throws Exception {
        return ada.json("PUT", "/api/users/rosa", json, "If-Match", tag);
    }
}
