package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.Role;

/**
 * Who may do what, endpoint by endpoint. The endpoints are those the running server knows of itself, so that a new one
 * without a row fails; each is asked by every role, by somebody without one, by nobody and by a locked user.
 */
class RoleTableTest {
    private static final String ALL = "specialist meeting-member rule-author clinical-lead safety-officer administrator"
            + " without-role nobody locked";
    private static final String SIGNED_IN =
            "specialist meeting-member rule-author clinical-lead safety-officer administrator without-role";
    private static final String CLINICAL = "specialist meeting-member rule-author clinical-lead safety-officer";
    private static final String SIGNERS = "specialist meeting-member clinical-lead safety-officer";
    private static final String CASES = "specialist meeting-member";
    private static final String SPECIALIST = "specialist";
    private static final String ADMINISTRATOR = "administrator";
    private static final String AUDIT = "administrator safety-officer";
    private static final String AUTHOR = "rule-author";
    private static final String NONE = "";

    /** Method and pattern as the server knows them, an address of that kind, and who may. */
    private static final List<Row> TABLE = List.of(
            row("GET /", "/", SIGNED_IN),
            row("GET /sign-in", "/sign-in", ALL),
            row("GET /signed-out", "/signed-out", ALL),
            row("GET /look.css", "/look.css", ALL),
            row("GET /first-start/{secret}", "/first-start/x", ALL),
            row("POST /first-start/{secret}", "/first-start/x", ALL),
            row("GET /password/{name}/{secret}", "/password/x/y", ALL),
            row("POST /password/{name}/{secret}", "/password/x/y", ALL),
            row("GET /my-password", "/my-password", SIGNED_IN),
            row("POST /my-password", "/my-password", SIGNED_IN),
            row("GET /api/session", "/api/session", ALL),
            row("GET /api/schemas/{contract}", "/api/schemas/case", ALL),
            row("GET /api", "/api", ALL),
            row("GET /api/openapi.json", "/api/openapi.json", ALL),
            row("GET /cases", "/cases", CASES),
            row("GET /cases/{caseRef}", "/cases/none", CASES),
            row("GET /window.js", "/window.js", CASES),
            row("GET /cases/{caseRef}/window/{segment}/{technique}", "/cases/none/window/L1/laser-1470-radial", CASES),
            row(
                    "GET /cases/{caseRef}/window/{segment}/{technique}/point",
                    "/cases/none/window/L1/laser-1470-radial/point",
                    CASES),
            row(
                    "GET /cases/{caseRef}/window/{segment}/{technique}/map",
                    "/cases/none/window/L1/laser-1470-radial/map",
                    CASES),
            row("GET /cases/{caseRef}/plan", "/cases/none/plan", CASES),
            row("POST /cases/{caseRef}/plan", "/cases/none/plan", SPECIALIST),
            row("GET /cases/new", "/cases/new", SPECIALIST),
            row("POST /cases/new", "/cases/new", SPECIALIST),
            row("GET /cases/import", "/cases/import", SPECIALIST),
            row("POST /cases/import", "/cases/import", SPECIALIST),
            row("GET /cases/take-file.js", "/cases/take-file.js", CASES),
            row("GET /cases/{caseRef}/similar/{segment}", "/cases/none/similar/L1", CASES),
            row("POST /cases/{caseRef}/choices/{segment}", "/cases/none/choices/L1", SPECIALIST),
            row("GET /cases/{caseRef}/edit", "/cases/none/edit", SPECIALIST),
            row("POST /cases/{caseRef}/edit", "/cases/none/edit", SPECIALIST),
            row("GET /cases/{caseRef}/meeting", "/cases/none/meeting", CASES),
            row("POST /cases/{caseRef}/meeting", "/cases/none/meeting", CASES),
            row("GET /cases/{caseRef}/papers", "/cases/none/papers", CASES),
            row("GET /cases/{caseRef}/sheet", "/cases/none/sheet", CASES),
            row("GET /cases/{caseRef}/follow-up", "/cases/none/follow-up", CASES),
            row("POST /cases/{caseRef}/follow-up", "/cases/none/follow-up", SPECIALIST),
            row(
                    "GET /cases/{caseRef}/plan/{number}/sessions/{session}/delivered",
                    "/cases/none/plan/1/sessions/1/delivered",
                    CASES),
            row(
                    "POST /cases/{caseRef}/plan/{number}/sessions/{session}/delivered",
                    "/cases/none/plan/1/sessions/1/delivered",
                    SPECIALIST),
            row("GET /cases/{caseRef}/past", "/cases/none/past", CASES),
            row("POST /cases/{caseRef}/past", "/cases/none/past", SPECIALIST),
            row("GET /past", "/past", CASES),
            row("GET /past/look", "/past/look?id=none", CASES),
            row("POST /past/release", "/past/release", CASES),
            row("POST /past/waiting/{id}/less", "/past/waiting/none/less", CASES),
            row("POST /past/waiting/{id}/refusal", "/past/waiting/none/refusal", CASES),
            row("POST /past/withdrawal", "/past/withdrawal", CASES),
            row("GET /results", "/results", CLINICAL),
            row("GET /results/pdf", "/results/pdf", CLINICAL),
            row("GET /api/results", "/api/results", CLINICAL),
            row("GET /meeting", "/meeting", CASES),
            row("GET /meeting/agenda/{date}", "/meeting/agenda/2026-12-01", CASES),
            row("GET /meeting/packets/{meetingId}", "/meeting/packets/none", CASES),
            row("GET /meeting/packets/{meetingId}/pdf", "/meeting/packets/none/pdf", CASES),
            row("POST /meeting/packets/{meetingId}/date", "/meeting/packets/none/date", CASES),
            row("GET /meeting/packets/{meetingId}/decision", "/meeting/packets/none/decision", CASES),
            row("POST /meeting/packets/{meetingId}/decision", "/meeting/packets/none/decision", CASES),
            row("POST /api/advice", "/api/advice", CLINICAL),
            row("POST /api/plan", "/api/plan", CLINICAL),
            row("GET /api/cases", "/api/cases", CASES),
            row("GET /api/cases/{caseRef}", "/api/cases/none", CASES),
            row("PUT /api/cases/{caseRef}", "/api/cases/none", SPECIALIST),
            row("GET /api/cases/{caseRef}/versions", "/api/cases/none/versions", CASES),
            row("GET /api/cases/{caseRef}/versions/{version}", "/api/cases/none/versions/1", CASES),
            row("POST /api/cases/{caseRef}/advice", "/api/cases/none/advice", SPECIALIST),
            row("POST /api/cases/{caseRef}/plan", "/api/cases/none/plan", SPECIALIST),
            row("POST /api/cases/{caseRef}/delivered", "/api/cases/none/delivered", SPECIALIST),
            row("POST /api/cases/{caseRef}/follow-up", "/api/cases/none/follow-up", SPECIALIST),
            row("GET /api/cases/{caseRef}/{kind}", "/api/cases/none/advice", CASES),
            row("GET /api/cases/{caseRef}/{kind}/{number}", "/api/cases/none/note/1", CASES),
            row("GET /api/governance/changes", "/api/governance/changes", CLINICAL),
            row("GET /api/governance/changes/{number}", "/api/governance/changes/0091", CLINICAL),
            row(
                    "POST /api/governance/changes/{number}/withdrawal",
                    "/api/governance/changes/0091/withdrawal",
                    "rule-author"),
            row("GET /api/governance/watch", "/api/governance/watch", CLINICAL),
            row("GET /api/governance/feedback", "/api/governance/feedback", CLINICAL),
            row("POST /api/governance/feedback/{card}/judgements", "/api/governance/feedback/none/judgements", SIGNERS),
            row("GET /api/governance/releases", "/api/governance/releases", CLINICAL),
            row("GET /api/governance/releases/{version}", "/api/governance/releases/1.0.0", CLINICAL),
            row("GET /api/governance/releases/{version}/manifest", "/api/governance/releases/1.0.0/manifest", CLINICAL),
            row("GET /api/governance/releases/{version}/replay", "/api/governance/releases/1.0.0/replay", CLINICAL),
            row(
                    "POST /api/governance/releases/{version}/signatures",
                    "/api/governance/releases/1.0.0/signatures",
                    SIGNERS),
            row("GET /governance", "/governance", CLINICAL),
            row("GET /governance/rules", "/governance/rules", CLINICAL),
            row("GET /governance/rules/{id}", "/governance/rules/none", CLINICAL),
            row("GET /governance/due", "/governance/due", CLINICAL),
            row("GET /governance/changes", "/governance/changes", CLINICAL),
            row("POST /governance/changes", "/governance/changes", AUTHOR),
            row("GET /governance/changes/{number}", "/governance/changes/0091", CLINICAL),
            row("POST /governance/changes/{number}/reason", "/governance/changes/0091/reason", AUTHOR),
            row("POST /governance/changes/{number}/submission", "/governance/changes/0091/submission", AUTHOR),
            row("POST /governance/changes/{number}/withdrawal", "/governance/changes/0091/withdrawal", AUTHOR),
            row("POST /governance/changes/{number}/release", "/governance/changes/0091/release", AUTHOR),
            row("POST /governance/changes/{number}/replay", "/governance/changes/0091/replay", AUTHOR),
            row("POST /governance/changes/{number}/number", "/governance/changes/0091/number", AUTHOR),
            row("POST /governance/changes/{number}/rule", "/governance/changes/0091/rule", AUTHOR),
            row("POST /governance/changes/{number}/text", "/governance/changes/0091/text", AUTHOR),
            row("GET /governance/changes/{number}/replay", "/governance/changes/0091/replay", CLINICAL),
            row("GET /governance/changes/{number}/number", "/governance/changes/0091/number?id=x", CLINICAL),
            row("GET /governance/changes/{number}/rule", "/governance/changes/0091/rule?id=x", CLINICAL),
            row("GET /governance/changes/{number}/text", "/governance/changes/0091/text?path=x", CLINICAL),
            row("GET /governance/follow.js", "/governance/follow.js", CLINICAL),
            row("GET /governance/feedback", "/governance/feedback", CLINICAL),
            row("POST /governance/feedback/{card}", "/governance/feedback/none", SIGNERS),
            row("GET /governance/releases", "/governance/releases", CLINICAL),
            row("GET /governance/releases/{version}", "/governance/releases/1.0.0", CLINICAL),
            row("GET /governance/releases/{version}/replay", "/governance/releases/1.0.0/replay", CLINICAL),
            row("GET /governance/releases/{version}/acts/{act}", "/governance/releases/1.0.0/acts/none", CLINICAL),
            row("POST /governance/releases/{version}/signatures", "/governance/releases/1.0.0/signatures", SIGNERS),
            row(
                    "POST /governance/releases/{version}/by-author/{act}",
                    "/governance/releases/1.0.0/by-author/none",
                    "rule-author"),
            row(
                    "POST /governance/releases/{version}/by-lead/{act}",
                    "/governance/releases/1.0.0/by-lead/none",
                    "clinical-lead"),
            row(
                    "POST /governance/releases/{version}/by-either/{act}",
                    "/governance/releases/1.0.0/by-either/none",
                    "clinical-lead safety-officer"),
            row("GET /api/users", "/api/users", ADMINISTRATOR),
            row("GET /api/users/{name}", "/api/users/none", ADMINISTRATOR),
            row("PUT /api/users/{name}", "/api/users/none", ADMINISTRATOR),
            row("POST /api/users/{name}/link", "/api/users/none/link", ADMINISTRATOR),
            row("GET /api/audit", "/api/audit", AUDIT),
            row("GET /api/audit/about", "/api/audit/about?kind=case&id=none", AUDIT),
            row("GET /api/audit/head", "/api/audit/head", AUDIT),
            row("GET /server", "/server", NONE),
            row("GET /server/health", "/server/health", ALL),
            row("GET /server/health/**", "/server/health/readiness", ALL),
            // asked from this machine
            row("GET /server/prometheus", "/server/prometheus", ALL),
            // only ever reached from inside
            row("ANY /error", "/error", NONE));

    /** Kept by filters before any controller. */
    private static final List<Row> OF_FILTERS =
            List.of(row("POST /sign-in", "/sign-in", ALL), row("POST /sign-out", "/sign-out", ALL));

    @TempDir
    private static Path folder;

    private static Clinic clinic;

    private record Row(String endpoint, String address, Set<String> allowed) {
        String method() {
            String method = endpoint.substring(0, endpoint.indexOf(' '));
            return method.equals("ANY") ? "GET" : method;
        }
    }

    private static Row row(String endpoint, String address, String allowed) {
        return new Row(endpoint, address, allowed.isEmpty() ? Set.of() : Set.of(allowed.split(" ")));
    }

    /** Every endpoint of the table. */
    static List<String> endpoints() {
        return Stream.concat(TABLE.stream(), OF_FILTERS.stream())
                .map(Row::endpoint)
                .toList();
    }

    @BeforeAll
    static void open() throws Exception {
        clinic = Clinic.open(folder);
        for (Role role : Role.values()) {
            clinic.user(role.word(), role);
        }
        clinic.user("without-role");
        clinic.user("locked", Role.values());
        for (int i = 0; i < Clinic.RULES.mostFailures(); i++) {
            clinic.browser().signIn("locked", "wrong");
        }
    }

    @AfterAll
    static void close() {
        clinic.close();
    }

    @Test
    void everyEndpointOfTheServer_hasARow() {
        Set<String> known = new TreeSet<>();
        TABLE.forEach(row -> known.add(row.endpoint()));
        assertEquals(known, Endpoints.of(clinic.server));
    }

    @Test
    void everyEndpoint_isOpenToThoseOfItsRowAlone() throws Exception {
        List<String> wrong = new ArrayList<>();
        for (String who : ALL.split(" ")) {
            Browser browser = clinic.browser();
            if (!who.equals("nobody")) {
                browser.signIn(who, Clinic.PASSWORD);
            }
            for (Row row : TABLE) {
                boolean allowed = allowed(browser, row);
                if (allowed != row.allowed().contains(who)) {
                    wrong.add(who + (allowed ? " may " : " may not ") + row.endpoint());
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void signingInAndOut_isOpenToAll() throws Exception {
        for (Row row : OF_FILTERS) {
            Browser browser = clinic.browser();
            HttpResponse<String> answer = browser.json("POST", row.address(), "");
            assertEquals(302, answer.statusCode(), row.endpoint());
        }
    }

    private static boolean allowed(Browser browser, Row row) throws Exception {
        HttpResponse<String> answer = browser.json(row.method(), row.address(), "{}");
        String location = answer.headers().firstValue("Location").orElse("");
        return answer.statusCode() != 401 && answer.statusCode() != 403 && !location.endsWith("/sign-in");
    }
}
