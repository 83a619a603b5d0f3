package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.tunica.store.Actor;
import org.tunica.store.Cases;
import org.tunica.store.KeptPastCase;

/** Past segments like one of a case: those released here for a case of the clinic, made-up ones for a made-up case. */
@ExtendWith(SharedClinic.class)
class SimilarPagesTest {
    private static final Actor SOMEBODY = new Actor("robin");

    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void onlyReleasedCasesAreFound_andNoneIsSaidPlainly() throws Exception {
        clinic.keep("similar-01", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.MEETING_MEMBER);
        assertTrue(browser.get("/cases/similar-01/similar/L1").body().contains("No past case is released here yet"));
        List<String> lines = Files.readAllLines(Path.of("knowledge/demo/past-cases.jsonl"));
        for (int i = 0; i < lines.size(); i++) {
            clinic.store.pastCases().offer(SOMEBODY, "similar-" + i, lines.get(i));
        }
        assertTrue(browser.get("/cases/similar-01/similar/L1").body().contains("No past case is released here yet"));
        for (int i = 0; i < lines.size(); i++) {
            KeptPastCase seen = clinic.store.pastCases().one("similar-" + i).orElseThrow();
            clinic.store.pastCases().release(SOMEBODY, seen, seen.line());
        }
        String found = browser.get("/cases/similar-01/similar/L1").body();
        assertTrue(found.contains(lines.size() + " past cases released here."), found);
        assertTrue(found.contains("Past cases inform and change no ranking."), found);
        assertTrue(found.contains("Why it is alike"), found);
        for (int i = 0; i < lines.size(); i++) {
            clinic.store.pastCases().withdraw(SOMEBODY, "similar-" + i);
        }
        assertTrue(browser.get("/cases/similar-01/similar/L1").body().contains("No past case is released here yet"));
    }

    @Test
    void anInventedCase_isComparedWithInventedOnes() throws Exception {
        clinic.keep(new Actor("demo:invented"), "similar-02", "straight-thigh-trunk", Cases.NONE);
        String found = clinic.signedIn(SharedClinic.SPECIALIST)
                .get("/cases/similar-02/similar/L1")
                .body();
        assertTrue(found.contains("INVENTED: 2,000 past cases of people who never were."), found);
        assertFalse(found.contains("No past case"), found);
    }

    @Test
    void aSegmentThatIsNotThere_isAPageThatSaysSo() throws Exception {
        clinic.keep("similar-03", "straight-thigh-trunk");
        assertEquals(
                404,
                clinic.signedIn(SharedClinic.SPECIALIST)
                        .get("/cases/similar-03/similar/none")
                        .statusCode());
    }
}
