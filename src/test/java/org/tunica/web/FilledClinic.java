package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tunica.releases.FirstRelease;
import org.tunica.store.Actor;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.Role;
import org.tunica.workroom.Draft;

/**
 * Fills an invented clinic until each of its pages has something to show: one case from its advice to a decision of the
 * meeting, a release that gave way to another, a change on its way to the next. Nobody in it ever lived.
 */
final class FilledClinic {
    /** Sees patients and sits in the meeting. */
    static final String WREN = "wren";

    static final String AUTHOR = "anna";
    static final String LEAD = "clara";
    static final String DAY = "2026-12-01";
    static final String CASE = "/cases/walk-1";

    private static final Actor SOMEBODY = new Actor("robin");
    private static final int MOST_GLANCES = 20_000;
    private static final String DISTANCES = "knowledge/limits/distances.yaml";

    private final Clinic clinic;
    private final Path folder;
    private final Map<String, String> places = new HashMap<>();

    FilledClinic(Clinic clinic, Path folder) {
        this.clinic = clinic;
        this.folder = folder;
    }

    /** Fills it, and tells what only it knows of its addresses: secret of a link, number of a change and of a meeting case. */
    Map<String, String> fill() throws Exception {
        clinic.user(WREN, Role.SPECIALIST, Role.MEETING_MEMBER);
        clinic.user(AUTHOR, Role.RULE_AUTHOR);
        clinic.user("rosa", Role.SPECIALIST);
        clinic.user(LEAD, Role.CLINICAL_LEAD);
        clinic.user("stefan", Role.SAFETY_OFFICER);
        clinic.user("ada", Role.ADMINISTRATOR);
        releases();
        changes();
        similar();
        treated();
        meeting();
        report(clinic);
        places.put("first", lastPart(clinic.server.linkForAnotherAdministrator().path()));
        Browser ada = clinic.signedIn("ada");
        String link = ada.json("POST", "/api/users/rosa/link", "").body();
        places.put("link", link.replaceAll("(?s).*/password/rosa/([^\"]+)\".*", "$1"));
        return Map.copyOf(places);
    }

    private void releases() {
        FirstRelease releases = FirstRelease.inForce(clinic.store, clinic.clock);
        clinic.clock.move(Duration.ofHours(1));
        releases.approve("1.1.0");
        releases.activate("1.1.0");
        clinic.clock.move(Duration.ofHours(1));
        releases.approve("1.2.0");
    }

    /** One that is begun, and one that is replayed, handed in, built into a release and handed over to review. */
    private void changes() throws Exception {
        Browser anna = clinic.signedIn(AUTHOR);
        String made = begun(anna, "change", "A wider gap to the skin");
        String was = Files.readString(
                folder.resolve("changes").resolve(places.get("change")).resolve(DISTANCES));
        String wider = was.replaceFirst(
                "(?m)^(heat.skin-gap.min:\\n(?:  .*\\n)*?  value: )\\S+((?:\\n  .*)*?\\n  change: )\\S+$",
                "$16$2\"" + places.get("change") + "\"");
        assertNotEquals(was, wider);
        sent(anna.fillIn(made, made + "/text", Map.of("path", DISTANCES, "seen", Draft.mark(was), "text", wider)));
        sent(anna.fillIn(made, made + "/reason", Map.of("reason", "a burn at five millimetres, invented")));
        sent(anna.fillIn(made, made + "/submission", Map.of()));
        sent(anna.fillIn(made, made + "/replay", Map.of("invented", "0")));
        for (int glances = 0; glances < MOST_GLANCES; glances++) {
            if (anna.get(made + "/replay").statusCode() == 200) {
                break;
            }
        }
        String release = sent(anna.fillIn(
                made, made + "/release", Map.of("version", "1.3.0", "title", "a wider gap", "reviewBy", "2027-01-01")));
        sent(anna.fillIn(release + "/acts/submission", release + "/by-author/submission", Map.of()));
        begun(anna, "begun", "Begun alone");
    }

    private String begun(Browser author, String name, String title) throws Exception {
        String made = sent(author.fillIn("/governance/changes", Map.of("title", title, "initials", "AK")));
        places.put(name, lastPart(made));
        return made;
    }

    private void similar() throws Exception {
        List<String> lines = Files.readAllLines(Path.of("knowledge/demo/past-cases.jsonl"));
        for (int i = 0; i < lines.size(); i++) {
            clinic.store.pastCases().bringIn(SOMEBODY, "walk-" + i, lines.get(i));
        }
    }

    private void treated() throws Exception {
        clinic.keep("walk-1", "straight-thigh-trunk");
        Browser wren = clinic.signedIn(WREN);
        wren.whole(CASE);
        wren.whole(CASE + "/similar/L1");
        sent(wren.fillIn(
                CASE + "/edit",
                CASE + "/choices/L1",
                Map.of(
                        "seen", "1",
                        "technique", "laser-1470-radial",
                        "reason", "device-not-in-house",
                        "words", "in repair until May")));
        wren.whole(CASE);
        sent(wren.fillIn(CASE + "/plan", Map.of()));
        sent(wren.fillIn(
                CASE + "/plan/1/sessions/1/delivered",
                Map.of(
                        "segments[0].technique", "rf-segmental-7cm",
                        "segments[0].treatedLengthCm", "36",
                        "segments[0].heat.cycles", "6",
                        "confirmed-0", "yes")));
        sent(wren.fillIn(
                CASE + "/follow-up",
                Map.of(
                        "daysAfter", "42",
                        "segments[0].treatedLengthCm", "36",
                        "segments[0].closure", "adhesive-open-stump",
                        "segments[0].openLengthCm", "2")));
        String looked = sent(wren.fillIn(CASE + "/past", Map.of("site", "site-a1", "note", "slept well, no pain")));
        places.put("past", looked.replaceFirst(".*=", ""));
    }

    private void meeting() throws Exception {
        String decided = referred(CASE, "Which way first?");
        Browser wren = clinic.signedIn(WREN);
        sent(wren.fillIn(
                decided + "/decision",
                Map.of(
                        "date", DAY,
                        "decision-L1", "leave-alone",
                        "reason-L1", "too little to gain",
                        "why-L1", "wish-of-the-patient",
                        "agreed", "AK, LB",
                        "owner", "AK",
                        "dissent-who-0", "MN",
                        "dissent-says-0", "would close it")));
        clinic.keep("walk-2", "straight-thigh-trunk");
        places.put("waiting", lastPart(referred("/cases/walk-2", "And the other leg?")));
    }

    private String referred(String at, String question) throws Exception {
        return sent(clinic.signedIn(WREN)
                .fillIn(at + "/meeting", Map.of("question", question, "because", "rare-finding", "date", DAY)));
    }

    /** A ward sets a card aside and says why. */
    static void report(Clinic clinic) {
        Actor ward = new Actor("hook:ward-7");
        clinic.store
                .cards()
                .keep(
                        ward,
                        new GivenCard(
                                "card-1", "plan", "1.0.0", "any", "laser-1470-radial", "careful", Set.of("EXC-007")));
        String body = "{\"feedback\":[{\"overrideReason\":{\"reason\":{\"code\":\"patient-refuses\"}}}]}";
        clinic.store
                .feedback()
                .keep(ward, new HookFeedback("plan", "card-1", "overridden", clinic.clock.instant(), body));
    }

    /** Where a form led that was taken. */
    private static String sent(HttpResponse<String> answer) {
        assertEquals(303, answer.statusCode(), answer.body());
        return answer.headers().firstValue("Location").orElseThrow().replaceFirst("#.*", "");
    }

    private static String lastPart(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
