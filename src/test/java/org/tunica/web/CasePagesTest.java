package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.tunica.plan.Advice;

/** The specialist's pages on a real server, by a plain client and in a real browser. */
@ExtendWith(SharedClinic.class)
class CasePagesTest {
    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void aKeptCase_isAdvisedOnWithEveryReasonAndTheCaution() throws Exception {
        clinic.keep("page-01", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        String page = browser.whole("/cases/page-01");
        assertTrue(page.contains(Advice.CAUTION));
        assertTrue(page.contains("DRAFT"));
        assertTrue(page.contains("segmental RF, 7 cm element"));
        assertTrue(page.contains("Limits and sources named above"));
        assertTrue(browser.get("/cases").body().contains("page-01"));
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("style="));
    }

    @Test
    void whatIsStillComputed_isSaidAndLookedForAgain() throws Exception {
        clinic.keep("page-02", "both-legs-many-segments");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        HttpResponse<String> first = browser.get("/cases/page-02");
        boolean whole = first.headers().firstValue("Refresh").isEmpty();
        assertEquals(whole, !first.body().contains(Browser.IN_PART), first.body());
        assertTrue(first.body().contains("LEFT leg"), first.body());
        assertFalse(browser.whole("/cases/page-02").contains("still computed"));
    }

    @Test
    void aCaseThatIsNotThereIsAPageThatSaysSo() throws Exception {
        HttpResponse<String> answer = clinic.signedIn(SharedClinic.SPECIALIST).get("/cases/none");
        assertEquals(404, answer.statusCode());
        assertTrue(answer.body().contains("There is no such case here."), answer.body());
    }

    /** A print has more pages than a footer, and the look of a print is a file that knows no words of the program. */
    @Test
    void everyPageOfAPrintBearsTheCaution() throws Exception {
        String look = clinic.signedIn(SharedClinic.SPECIALIST).get("/look.css").body();
        assertTrue(look.contains("content: \"" + Advice.CAUTION + "\";"), look);
    }

    @Test
    void aMemberOfTheMeetingReadsButDoesNotWrite() throws Exception {
        assertFalse(clinic.signedIn(SharedClinic.MEETING_MEMBER)
                .get("/cases")
                .body()
                .contains("/cases/new"));
    }
}
