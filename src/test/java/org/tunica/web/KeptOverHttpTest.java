package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.Tunica;
import org.tunica.couch.DemoCases;
import org.tunica.knowledge.DemoFiles;
import org.tunica.store.Act;
import org.tunica.store.Engine;
import org.tunica.store.Page;
import org.tunica.store.Role;
import org.tunica.store.Subject;

/** Cases and what is made from them over HTTP, on both databases: what was sent is what is given back. */
class KeptOverHttpTest {
    private static final Tunica TUNICA = Tunica.shipped();
    private static final Path DEMO = Path.of("knowledge/demo");

    @TempDir
    private Path folder;

    /** What a test does with a specialist at a browser. */
    private interface Story {
        void tell(Clinic clinic, Browser rosa) throws Exception;
    }

    private void at(Engine engine, Story story) throws Exception {
        try (Clinic clinic = Clinic.at(engine.freshPlace(folder), settings -> settings)) {
            clinic.user("rosa", Role.SPECIALIST);
            story.tell(clinic, clinic.signedIn("rosa"));
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void savedCase_comesBackByteForByteInEveryVersion(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            String first = demo("pregnancy.json");
            String second = first.replace("\"ageYears\": 31", "\"ageYears\": 32") + "\n";
            HttpResponse<String> made = rosa.json("PUT", "/api/cases/larkspur-09", first, "If-None-Match", "*");
            assertEquals(201, made.statusCode(), made.body());
            assertEquals("\"1\"", tag(made));
            HttpResponse<String> changed = rosa.json("PUT", "/api/cases/larkspur-09", second, "If-Match", "\"1\"");
            assertEquals(200, changed.statusCode(), changed.body());
            assertEquals(second, rosa.get("/api/cases/larkspur-09").body());
            assertEquals("\"2\"", tag(rosa.get("/api/cases/larkspur-09")));
            assertEquals(first, rosa.get("/api/cases/larkspur-09/versions/1").body());
            assertTrue(rosa.get("/api/cases/larkspur-09/versions").body().contains("\"version\":2"));
        });
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void saveOverWhatWasNotSeen_isRefusedAndChangesNothing(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            String json = demo("pregnancy.json");
            String path = "/api/cases/larkspur-09";
            assertEquals(428, rosa.json("PUT", path, json).statusCode());
            assertEquals(412, rosa.json("PUT", path, json, "If-Match", "\"1\"").statusCode());
            rosa.json("PUT", path, json, "If-None-Match", "*");
            assertEquals(412, rosa.json("PUT", path, json, "If-None-Match", "*").statusCode());
            rosa.json("PUT", path, json, "If-Match", "\"1\"");
            assertEquals(412, rosa.json("PUT", path, json, "If-Match", "\"1\"").statusCode());
            assertEquals(2, clinic.store.cases().history("larkspur-09").size());
        });
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void faultyCaseOrOtherReference_isNotKept(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            HttpResponse<String> other =
                    rosa.json("PUT", "/api/cases/larkspur-77", demo("pregnancy.json"), "If-None-Match", "*");
            assertEquals(422, other.statusCode());
            assertTrue(other.body().contains("$.caseRef"), other.body());
            assertEquals(
                    422,
                    rosa.json("PUT", "/api/cases/larkspur-77", "{}", "If-None-Match", "*")
                            .statusCode());
            assertEquals(404, rosa.get("/api/cases/larkspur-77").statusCode());
        });
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void everyLook_isARowOfTheTrail(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            rosa.json("PUT", "/api/cases/larkspur-09", demo("pregnancy.json"), "If-None-Match", "*");
            rosa.json("POST", "/api/cases/larkspur-09/advice", "");
            List<String> looks = List.of(
                    "/api/cases",
                    "/api/cases/larkspur-09",
                    "/api/cases/larkspur-09/versions",
                    "/api/cases/larkspur-09/versions/1",
                    "/api/cases/larkspur-09/advice",
                    "/api/cases/larkspur-09/advice/1");
            for (String look : looks) {
                long before = clinic.store.audit().head().number();
                assertEquals(200, rosa.get(look).statusCode(), look);
                var rows = clinic.store.audit().newest(Page.newest(1));
                assertEquals(before + 1, clinic.store.audit().head().number(), look);
                assertEquals(Act.VIEWED.word(), rows.get(0).act(), look);
                assertEquals("rosa", rows.get(0).actor(), look);
            }
            assertEquals(
                    new Subject("document", "larkspur-09/advice/1"),
                    clinic.store.audit().newest(Page.newest(1)).get(0).subject());
            assertTrue(clinic.store.audit().verify().sound());
        });
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void keptAdvice_isWhatTheFrontDoorSays(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            String json = demo("pregnancy.json");
            rosa.json("PUT", "/api/cases/larkspur-09", json, "If-None-Match", "*");
            HttpResponse<String> made = rosa.json("POST", "/api/cases/larkspur-09/advice", "");
            assertEquals(201, made.statusCode(), made.body());
            assertEquals(TUNICA.toJson(TUNICA.advise(TUNICA.readCase("case", bytes(json)))), made.body());
            String at = made.headers().firstValue("Location").orElseThrow();
            assertEquals(made.body(), rosa.get(at).body());
            assertTrue(rosa.get("/api/cases/larkspur-09/advice")
                    .body()
                    .contains(TUNICA.release().digest()));
        });
    }

    /** One case from the scan to the follow-up, as the demo has it. */
    @ParameterizedTest
    @EnumSource(Engine.class)
    void planRecordNoteAndFollowUp_belongTogether(Engine engine) throws Exception {
        at(engine, (clinic, rosa) -> {
            String at = "/api/cases/larkspur-11";
            rosa.json("PUT", at, demo("both-legs-many-segments.json"), "If-None-Match", "*");
            assertEquals(404, rosa.json("POST", at + "/delivered", "{}").statusCode());
            assertEquals(201, rosa.json("POST", at + "/plan", "").statusCode());
            String delivered = demo("delivered/both-legs-many-segments.json");
            HttpResponse<String> note = rosa.json("POST", at + "/delivered", delivered);
            assertEquals(201, note.statusCode(), note.body());
            assertTrue(note.headers().firstValue("Location").orElseThrow().endsWith("/note/1"));
            assertEquals(delivered, rosa.get(at + "/delivered/1").body());
            HttpResponse<String> page = rosa.get(at + "/note/1?as=html");
            assertTrue(page.body().contains("Procedure note"), page.body());
            assertTrue(page.headers()
                    .firstValue("Content-Security-Policy")
                    .orElse("")
                    .contains("default-src 'none'"));
            byte[] pdf = rosa.bytes(at + "/note/1?as=pdf").body();
            assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
            assertArrayEquals(
                    TUNICA.toPdf(TUNICA.treatments()
                            .note(
                                    TUNICA.plan(TUNICA.readCase("case", bytes(demo("both-legs-many-segments.json")))),
                                    TUNICA.treatments().readDelivered("delivered", bytes(delivered)))
                            .page()),
                    pdf);
            assertEquals(404, rosa.get(at + "/plan/1?as=pdf").statusCode());
            HttpResponse<String> treatment =
                    rosa.json("POST", at + "/follow-up", demo("follow-up/both-legs-many-segments.json"));
            assertEquals(201, treatment.statusCode(), treatment.body());
            assertTrue(treatment.body().contains("tunica-treatment/1"), treatment.body());
            assertEquals(422, rosa.json("POST", at + "/delivered", "{}").statusCode());
            assertTrue(clinic.store.audit().verify().sound());
        });
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void inventedCases_arePutInOnceMarkedAndListedInStretches(Engine engine) throws Exception {
        try (Clinic clinic = Clinic.at(engine.freshPlace(folder), settings -> settings)) {
            int invented = DemoFiles.cases().size();
            assertTrue(invented > 10);
            assertEquals(invented, DemoCases.putInto(clinic.store, TUNICA));
            assertEquals(0, DemoCases.putInto(clinic.store, TUNICA));
            clinic.user("rosa", Role.SPECIALIST);
            Browser rosa = clinic.signedIn("rosa");
            rosa.json("PUT", "/api/cases/larkspur-09", demo("pregnancy.json"), "If-Match", "\"1\"");
            String own = demo("pregnancy.json").replace("larkspur-09", "own-1");
            rosa.json("PUT", "/api/cases/own-1", own, "If-None-Match", "*");
            String first = rosa.get("/api/cases?most=2").body();
            assertTrue(first.contains("\"caseRef\":\"own-1\",\"version\":1"), first);
            assertTrue(first.contains("\"invented\":false"), first);
            assertTrue(first.contains("\"caseRef\":\"larkspur-09\",\"version\":2"), first);
            assertTrue(first.contains("\"invented\":true"), first);
            String next = first.replaceAll(".*\"next\":(\\d+).*", "$1");
            String rest = rosa.get("/api/cases?most=100&before=" + next).body();
            assertEquals(invented, rest.split("\"caseRef\"", -1).length, rest);
            assertFalse(rest.contains("\"next\""), rest);
            assertEquals(400, rosa.get("/api/cases?most=0").statusCode());
        }
    }

    private static String tag(HttpResponse<String> answer) {
        return answer.headers().firstValue("ETag").orElse("none");
    }

    private static String demo(String file) throws Exception {
        return Files.readString(DEMO.resolve(file));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
