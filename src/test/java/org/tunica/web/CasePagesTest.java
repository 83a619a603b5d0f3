package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.tunica.CaseTree;
import org.tunica.plan.Advice;

/** The specialist's pages on a real server, by a plain client and in a real browser. */
@ExtendWith(SharedClinic.class)
class CasePagesTest {
    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void aCasePutInIsAdvisedOnWithEveryReasonAndTheCaution() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        HttpResponse<String> saved = browser.fillIn("/cases", Map.of("case", text("straight-thigh-trunk", "page-01")));
        assertEquals(303, saved.statusCode(), saved.body());
        assertEquals("/cases/page-01", saved.headers().firstValue("Location").orElseThrow());
        String page = browser.get("/cases/page-01").body();
        assertTrue(page.contains(Advice.CAUTION));
        assertTrue(page.contains("DRAFT"));
        assertTrue(page.contains("segmental RF, 7 cm element"));
        assertTrue(page.contains("Limits and sources named above"));
        assertTrue(browser.get("/cases").body().contains("page-01"));
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("style="));
    }

    @Test
    void aFaultyCaseComesBackWholeWithEveryFaultAndItsPlace() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        String faulty = new String(
                CaseTree.demo("straight-thigh-trunk")
                        .set("caseRef", "page-02")
                        .set("limbs.0.segments.0.lumenDiameterMm", -1)
                        .set("patient.sex", "<b>none</b>")
                        .bytes(),
                StandardCharsets.UTF_8);
        HttpResponse<String> answer = browser.fillIn("/cases", Map.of("case", faulty));
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("lumenDiameterMm"), answer.body());
        assertTrue(answer.body().contains("patient.sex"), answer.body());
        assertTrue(answer.body().contains("&lt;b>") || answer.body().contains("&lt;b&gt;"), answer.body());
        assertTrue(clinic.store.cases().latest("page-02").isEmpty());
    }

    @Test
    void aReferenceTakenIsToldAndNothingIsWrittenOver() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        browser.fillIn("/cases", Map.of("case", text("accessory-trunk", "page-03")));
        HttpResponse<String> second = browser.fillIn("/cases", Map.of("case", text("pregnancy", "page-03")));
        assertEquals(422, second.statusCode());
        assertTrue(second.body().contains("There is a case of that reference already"), second.body());
        assertEquals(1, clinic.store.cases().latest("page-03").orElseThrow().version());
    }

    @Test
    void aCaseThatIsNotThereIsAPageThatSaysSo() throws Exception {
        HttpResponse<String> answer = clinic.signedIn(SharedClinic.SPECIALIST).get("/cases/none");
        assertEquals(404, answer.statusCode());
        assertTrue(answer.body().contains("There is no such case here."), answer.body());
    }

    @Test
    void aMemberOfTheMeetingReadsButDoesNotWrite() throws Exception {
        assertFalse(clinic.signedIn(SharedClinic.MEETING_MEMBER)
                .get("/cases")
                .body()
                .contains("<textarea"));
    }

    @Test
    void theMainPathIsWalkedByKeyboardAndHindersNobody() throws Exception {
        try (Screen screen = Screen.at(URI.create("http://127.0.0.1:" + clinic.server.port()))) {
            screen.signIn(SharedClinic.SPECIALIST, Clinic.PASSWORD);
            assertEquals(List.of(), screen.hindrances());
            screen.open("/cases");
            assertEquals(List.of(), screen.hindrances());
            screen.driver.executeScript(
                    "document.getElementById('case').value = arguments[0]", text("both-legs-many-segments", "page-04"));
            screen.driver.findElement(By.id("case")).sendKeys(Keys.TAB);
            screen.driver.switchTo().activeElement().sendKeys(Keys.ENTER);
            assertTrue(screen.text().contains("Case page-04"), screen.text());
            assertEquals(List.of(), screen.hindrances());
            screen.picture("advice-light");
            WebElement why = screen.driver.findElement(By.cssSelector(".option summary"));
            why.sendKeys(Keys.ENTER);
            assertTrue(
                    screen.driver.findElement(By.cssSelector(".option details")).getAttribute("open") != null);
            screen.emulate("screen", "dark");
            assertEquals(List.of(), screen.hindrances());
            screen.picture("advice-dark");
            screen.emulate("print", "light");
            screen.picture("advice-print");
        }
    }

    private static String text(String demo, String caseRef) {
        return new String(CaseTree.demo(demo).set("caseRef", caseRef).bytes(), StandardCharsets.UTF_8);
    }
}
