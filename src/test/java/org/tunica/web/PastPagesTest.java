package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.store.AuditRow;
import org.tunica.store.Engine;
import org.tunica.store.Page;
import org.tunica.store.Role;

/** Finished cases of invented people lose the person, are looked at, released, counted and taken out again, by page, over PostgreSQL. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PastPagesTest {
    private static final int K = 5;
    private static final Pattern ID = Pattern.compile("p-[0-9a-f]{24}");
    private static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");

    @TempDir
    private static Path folder;

    private static Clinic clinic;
    private static Browser wren;
    private static Browser merle;
    private static final List<String> IDS = new ArrayList<>();

    @BeforeAll
    static void open() throws Exception {
        clinic = Clinic.at(Engine.POSTGRESQL.freshPlace(folder), settings -> settings);
        clinic.user("wren", Role.SPECIALIST);
        clinic.user("merle", Role.MEETING_MEMBER);
        clinic.user("clara", Role.CLINICAL_LEAD);
        wren = clinic.signedIn("wren");
        merle = clinic.signedIn("merle");
    }

    @AfterAll
    static void close() {
        clinic.close();
    }

    @Test
    @Order(1)
    void beforeAnythingIsReleased_thereAreMadeUpResultsAlone() throws Exception {
        Browser clara = clinic.signedIn("clara");
        String none = clara.get("/results").body();
        assertTrue(none.contains("No past case is released here yet"), none);
        String madeUp = clara.get("/results?invented=yes").body();
        assertTrue(
                madeUp.contains("INVENTED: made-up cases are counted here.")
                        && madeUp.contains("At a glance, at one year"),
                madeUp);
        assertTrue(madeUp.contains("site-inv1"), "sites to choose from");
        assertFalse(madeUp.contains("<svg"), "charts of one technique at a time");
        String foam =
                clara.get("/results?invented=yes&technique=foam-polidocanol").body();
        assertTrue(foam.contains("<svg") && foam.contains("Stayed closed up to that day"), foam);
        String held = clara.get("/results?invented=yes&technique=foam-polidocanol&against=laser-1470-radial")
                .body();
        assertTrue(held.contains("Log-rank: chi-square"), held);
        HttpResponse<String> faulty = clara.get("/results?invented=yes&technique=foam-polidocanool&from=May&to=2024");
        assertEquals(422, faulty.statusCode());
        assertTrue(faulty.body().contains("from: must be a year such as 2024, or left empty"), faulty.body());
        String misspelt =
                clara.get("/results?invented=yes&technique=foam-polidocanool").body();
        assertTrue(misspelt.contains("there is no technique"), misspelt);
    }

    @Test
    @Order(2)
    void whatIsNotFinished_isNotOffered() throws Exception {
        clinic.keep("past-0", "straight-thigh-trunk");
        assertTrue(wren.get("/cases/past-0/past").body().contains("Not finished"));
        HttpResponse<String> refused = wren.form("/cases/past-0/past", wren.token(), Map.of("site", "site-a1"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("a visit afterwards must be kept first"), refused.body());
    }

    @Test
    @Order(3)
    void finishedCasesWait_withoutThePerson() throws Exception {
        for (int number = 1; number <= K; number++) {
            treated("past-" + number, 38 - number);
        }
        assertTrue(wren.get("/cases/past-1/papers").body().contains("Offer it as a past case"));
        HttpResponse<String> faulty =
                wren.fillIn("/cases/past-1/past", Map.of("site", "Larkspur", "year", "last", "note", "kept words"));
        assertEquals(422, faulty.statusCode());
        assertTrue(faulty.body().contains("must be a year such as 2026"), faulty.body());
        assertTrue(faulty.body().contains("kept words"), "what was typed is not lost");
        for (int number = 1; number <= K; number++) {
            HttpResponse<String> taken = wren.fillIn(
                    "/cases/past-" + number + "/past",
                    Map.of("site", "site-a1", "note", "Rose Thornbury slept well, born 3.4.1960"));
            assertEquals(303, taken.statusCode(), taken.body());
            IDS.add(first(ID, taken.headers().firstValue("Location").orElseThrow()));
        }
        HttpResponse<String> again = wren.fillIn("/cases/past-2/past", Map.of("site", "site-a1"));
        assertEquals(422, again.statusCode());
        assertTrue(again.body().contains("say the same as " + IDS.get(1) + ", which waits already"), again.body());
        assertTrue(wren.get("/cases/past-2/past").body().contains("value=\"site-a1\""), "the site is remembered");
        String waiting = merle.get("/past").body();
        IDS.forEach(id -> assertTrue(waiting.contains(id), id));
        // what is drawn by lot or reckoned may hold any digits
        String whole = merle.get(look()).body().replaceAll(ID + "|" + DIGEST + "|name=\"_csrf\" value=\"[^\"]+\"", "");
        for (String planted : List.of("Rose", "Thornbury", "1960", "past-1", "wren", "2026-1")) {
            assertFalse(whole.contains(planted), planted);
        }
        assertTrue(whole.contains("slept well"), whole);
    }

    @Test
    @Order(4)
    void whoReleases_hasSeenExactlyThat_andEnoughTogether() throws Exception {
        String seen = first(DIGEST, merle.get("/past/look?id=" + IDS.get(0)).body());
        HttpResponse<String> alone = release(List.of(seen));
        assertEquals(422, alone.statusCode());
        assertTrue(alone.body().contains("is held back: it waits for 4 more"), alone.body());
        HttpResponse<String> nothing = less(IDS.get(0), "year");
        assertEquals(422, nothing.statusCode());
        assertTrue(nothing.body().contains("tells no more than that already"), nothing.body());
        for (String id : IDS) {
            HttpResponse<String> less = less(id, "age");
            assertEquals(303, less.statusCode(), less.body());
        }
        HttpResponse<String> stale = release(List.of(seen));
        assertEquals(422, stale.statusCode());
        assertTrue(stale.body().contains("it may have changed since"), stale.body());
        String whole = merle.get(look()).body();
        assertTrue(whole.contains("age: 50-69 years"), whole);
        List<String> digests = DIGEST.matcher(whole)
                .results()
                .map(found -> found.group())
                .distinct()
                .toList();
        assertEquals(K, digests.size());
        assertEquals(303, release(digests).statusCode());
        assertTrue(merle.get("/past").body().contains("No case waits."));
        String similar = wren.whole("/cases/past-0/similar/L1");
        assertTrue(similar.contains("5 past cases released here."), similar);
        assertTrue(similar.contains("Kept as " + IDS.get(0) + ", segment L1."), "the name by which it is taken out");
    }

    @Test
    @Order(5)
    void resultsAreThoseOfWhatIsReleased_andOfNothingTakenOut() throws Exception {
        Browser clara = clinic.signedIn("clara");
        String all = clara.get("/results").body();
        assertTrue(all.contains("<th scope=\"row\">Treated segments</th><td>5</td>"), all);
        assertFalse(all.contains("INVENTED"), all);
        String one = clara.get("/results?technique=rf-segmental-7cm").body();
        assertTrue(one.contains("5 segments of 5 past cases"), one);
        HttpResponse<String> json = clara.get("/api/results?technique=rf-segmental-7cm");
        assertTrue(json.body().contains("\"format\" : \"tunica-audit/1\""), json.body());
        assertTrue(clara.get("/results/pdf?technique=rf-segmental-7cm").body().startsWith("%PDF"));
        HttpResponse<String> unknown = merle.fillIn("/past", "/past/withdrawal", Map.of("id", "p-0"));
        assertEquals(422, unknown.statusCode());
        assertEquals(
                303,
                merle.fillIn("/past", "/past/withdrawal", Map.of("id", IDS.get(0)))
                        .statusCode());
        assertTrue(clara.get("/results").body().contains("There is no group large enough to tell of."));
        assertTrue(wren.whole("/cases/past-0/similar/L1").contains("4 past cases released here."));
        assertEquals(
                List.of("past-case-withdrawn", "past-case-released", "past-case-coarsened", "past-case-offered"),
                clinic.store.audit().newest(Page.newest(500)).stream()
                        .map(AuditRow::act)
                        .filter(act -> act.startsWith("past-case"))
                        .distinct()
                        .toList());
        assertEquals(List.of(), clinic.store.audit().verify().faults());
    }

    private static void treated(String caseRef, int lengthCm) throws Exception {
        clinic.keep(caseRef, "straight-thigh-trunk");
        String at = "/cases/" + caseRef;
        assertEquals(303, wren.fillIn(at + "/plan", Map.of()).statusCode());
        assertEquals(
                303,
                wren.fillIn(
                                at + "/plan/1/sessions/1/delivered",
                                Map.of(
                                        "segments[0].technique", "rf-segmental-7cm",
                                        "segments[0].treatedLengthCm", Integer.toString(lengthCm),
                                        "segments[0].heat.cycles", "6",
                                        "confirmed-0", "yes"))
                        .statusCode());
        assertEquals(
                303,
                wren.fillIn(
                                at + "/follow-up",
                                Map.of(
                                        "daysAfter", "42",
                                        "segments[0].treatedLengthCm", Integer.toString(lengthCm),
                                        "segments[0].closure", "heat-open-part",
                                        "segments[0].openLengthCm", "2"))
                        .statusCode());
    }

    private static String look() {
        return "/past/look?id=" + String.join("&id=", IDS);
    }

    private static HttpResponse<String> less(String id, String what) throws Exception {
        return merle.fillIn("/past/look?id=" + id, "/past/waiting/" + id + "/less", Map.of("less", what));
    }

    private static HttpResponse<String> release(List<String> digests) throws Exception {
        String fields = digests.stream()
                .map(digest -> "digest=" + URLEncoder.encode(digest, StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return merle.form("/past/release?" + fields, merle.token(), Map.of());
    }

    private static String first(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertTrue(matcher.find(), text);
        return matcher.group();
    }
}
