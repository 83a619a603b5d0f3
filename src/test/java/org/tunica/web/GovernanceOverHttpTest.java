package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.proposal.Author;
import org.tunica.releases.ChangeDesk;
import org.tunica.releases.Engines;
import org.tunica.releases.Program;
import org.tunica.releases.ReleaseRecords;
import org.tunica.store.Actor;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Page;
import org.tunica.store.Role;

/** What those who govern the rules ask a server for, and what it takes from them. */
class GovernanceOverHttpTest {
    private static final Actor HOOK = new Actor("hook:ward-7");

    @TempDir
    private Path folder;

    private Clinic clinic;

    @BeforeEach
    void open() {
        clinic = Clinic.open(folder.resolve("data"));
        clinic.user("anna", Role.RULE_AUTHOR);
        clinic.user("ben", Role.RULE_AUTHOR);
        clinic.user("stefan", Role.SAFETY_OFFICER);
    }

    @AfterEach
    void close() {
        clinic.close();
    }

    @Test
    void aChange_isReadByteForByteAndTakenBackByItsAuthorAlone() throws Exception {
        Author author = Author.at(folder.resolve("copy")).widensTheGap();
        Engines engines = new Engines(new ReleaseRecords(clinic.store), clinic.clock, Program.running());
        ChangeDesk desk = new ChangeDesk(clinic.store, engines);
        desk.submit(new Actor("anna"), author.copy(), author.checked());
        String path = "/api/governance/changes/" + author.number();

        Browser stefan = clinic.signedIn("stefan");
        assertEquals(author.checked().toJson(), stefan.get(path).body());
        assertTrue(stefan.get("/api/governance/changes").body().contains("\"state\":\"in-review\""));
        assertEquals(404, stefan.get("/api/governance/changes/9999").statusCode());

        String because = "{\"because\":\"a better source was found\"}";
        HttpResponse<String> notHers = clinic.signedIn("ben").json("POST", path + "/withdrawal", because);
        assertEquals(422, notHers.statusCode());
        assertTrue(notHers.body().contains("taken back by its author"), notHers.body());
        HttpResponse<String> hers = clinic.signedIn("anna").json("POST", path + "/withdrawal", because);
        assertEquals(200, hers.statusCode(), hers.body());
        assertTrue(hers.body().contains("\"state\":\"withdrawn\""), hers.body());
        assertEquals(
                "anna",
                clinic.store.audit().newest(Page.newest(50)).stream()
                        .filter(row -> row.act().equals("change-withdrawn"))
                        .findFirst()
                        .orElseThrow()
                        .actor());
    }

    @Test
    void aFinding_isKeptUnderTheNameOfWhoIsSignedInAndNoPatientsWordsAreShown() throws Exception {
        Instant at = clinic.clock.instant();
        clinic.store
                .cards()
                .keep(
                        HOOK,
                        new GivenCard(
                                "card-1",
                                "plan",
                                "1.0.0",
                                "sha256:a",
                                "laser-1470-radial",
                                "careful",
                                Set.of("EXC-007")));
        clinic.store
                .feedback()
                .keep(
                        HOOK,
                        new HookFeedback(
                                "plan",
                                "card-1",
                                "overridden",
                                at,
                                "{\"feedback\":[{\"overrideReason\":{\"userComment\":\"Mrs Planted said no\"}}]}"));
        Browser stefan = clinic.signedIn("stefan");
        HttpResponse<String> found = stefan.json(
                "POST",
                "/api/governance/feedback/card-1/judgements",
                "{\"found\":\"appropriate\",\"because\":\"as the scan showed\"}");
        assertEquals(200, found.statusCode(), found.body());
        assertTrue(found.body().contains("\"judge\":\"stefan\""), found.body());

        String list = stefan.get("/api/governance/feedback").body();
        assertTrue(list.contains("EXC-007"), list);
        assertFalse(list.contains("Planted"), list);
        HttpResponse<String> faulty =
                stefan.json("POST", "/api/governance/feedback/card-1/judgements", "{\"found\":\"fine\"}");
        assertEquals(422, faulty.statusCode());
        assertTrue(faulty.body().contains("$.found") && faulty.body().contains("$.because"), faulty.body());
    }

    @Test
    void aLook_isADocumentAndARowOfTheTrail() throws Exception {
        Browser stefan = clinic.signedIn("stefan");
        HttpResponse<String> look = stefan.get("/api/governance/watch?days=10&before=20");
        assertEquals(200, look.statusCode(), look.body());
        assertTrue(look.body().contains("\"format\" : \"tunica-watch/1\""), look.body());
        assertEquals(
                "rules-watched",
                clinic.store.audit().newest(Page.newest(1)).get(0).act());
        assertEquals(422, stefan.get("/api/governance/watch?days=0").statusCode());
    }

    @Test
    void releases_areListedAndASignatureOfAnotherIsRefused() throws Exception {
        Browser stefan = clinic.signedIn("stefan");
        assertEquals("[]", stefan.get("/api/governance/releases").body());
        assertEquals(404, stefan.get("/api/governance/releases/1.0.0").statusCode());
        assertEquals(
                404,
                stefan.json("POST", "/api/governance/releases/1.0.0/signatures", "{}")
                        .statusCode());
    }
}
