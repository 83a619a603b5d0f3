package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.store.Actor;

/** A case as a form on a real server, by a client that runs no script. */
@ExtendWith(SharedClinic.class)
class CaseFormPagesTest {
    private static final Actor SOMEBODY_ELSE = new Actor("robin");

    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void aCaseTypedIn_isKeptAndAdvisedOn() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        HttpResponse<String> saved = browser.fillIn("/cases/new", fields("form-01"));
        assertEquals(303, saved.statusCode(), saved.body());
        assertEquals("/cases/form-01", saved.headers().firstValue("Location").orElseThrow());
        CaseFile kept = read("form-01");
        assertEquals(
                0.38, kept.limbs().get(0).segments().get(0).wallThicknessMm().getAsDouble());
        assertTrue(kept.patient().allergies().isEmpty());
        assertTrue(kept.patient().weightKg().isEmpty());
    }

    @Test
    void aFaultyCase_comesBackWithEachFaultAtItsFieldAndNothingLost() throws Exception {
        Map<String, String> fields = fields("form-02");
        fields.put("limbs[0].segments[0].lumenDiameterMm", "64<");
        fields.put("patient.ageYears", "540");
        HttpResponse<String> answer = clinic.signedIn(SharedClinic.SPECIALIST).fillIn("/cases/new", fields);
        assertEquals(422, answer.statusCode());
        String page = answer.body();
        assertTrue(page.contains("2 things are to be mended; nothing was saved"), page);
        assertTrue(page.contains("value=\"64&lt;\""), page);
        assertTrue(page.contains("<a href=\"#field-patient-ageYears\">"), page);
        assertTrue(page.contains("id=\"field-patient-ageYears-fault\""), page);
        assertTrue(page.contains("must be 0 to 120 years, is 540"), page);
        assertTrue(page.contains("value=\"0.38\""), page);
        assertTrue(clinic.store.cases().latest("form-02").isEmpty());
    }

    @Test
    void segmentsAndLegs_areAddedWithoutScriptAndWithoutSaving() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        Map<String, String> fields = fields("form-03");
        fields.put("do", "copy limbs[0].segments[0]");
        String copied = browser.fillIn("/cases/new", fields).body();
        assertTrue(copied.contains("name=\"limbs[0].segments[1].wallThicknessMm\""), copied);
        assertTrue(copied.contains("Segment 2: great saphenous, thigh (LEFT leg)"), copied);
        fields.put("do", "add-leg");
        assertTrue(browser.fillIn("/cases/new", fields).body().contains("name=\"limbs[1].side\""));
        assertTrue(clinic.store.cases().latest("form-03").isEmpty());
    }

    @Test
    void aKeptCase_standsInItsFormAsItWasSaved_andItsNextVersionBesideTheFirst() throws Exception {
        clinic.keep("form-04", "both-legs-many-segments");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        String page = browser.get("/cases/form-04/edit").body();
        assertTrue(page.contains("name=\"seen\" value=\"1\""), page);
        assertTrue(page.contains("RIGHT leg"), page);
        Map<String, String> fields = fields("form-04");
        fields.put("seen", "1");
        assertEquals(303, browser.fillIn("/cases/form-04/edit", fields).statusCode());
        assertEquals(2, clinic.store.cases().latest("form-04").orElseThrow().version());
    }

    @Test
    void whoSavesOnAnOlderVersion_isShownWhatChangedAndLosesNothing() throws Exception {
        clinic.keep("form-05", "straight-thigh-trunk");
        clinic.keep(SOMEBODY_ELSE, "form-05", "vein-in-spasm", 1);
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        Map<String, String> fields = fields("form-05");
        fields.put("seen", "1");
        fields.put("patient.ageYears", "61");
        HttpResponse<String> late = browser.fillIn("/cases/form-05/edit", fields);
        assertEquals(409, late.statusCode());
        assertTrue(late.body().contains("Version 2 was saved meanwhile by robin"), late.body());
        assertTrue(late.body().contains("Thickness of the whole wall"), late.body());
        assertTrue(late.body().contains("name=\"patient.ageYears\" type=\"text\" value=\"61\""), late.body());
        assertTrue(late.body().contains("name=\"seen\" value=\"2\""), late.body());
        assertEquals(2, clinic.store.cases().latest("form-05").orElseThrow().version());
    }

    @Test
    void aNameThatIsTaken_isTold() throws Exception {
        clinic.keep("form-06", "straight-thigh-trunk");
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        HttpResponse<String> answer = browser.fillIn("/cases/new", fields("form-06"));
        assertEquals(422, answer.statusCode());
        assertTrue(answer.body().contains("is the name of another case already"), answer.body());
        assertTrue(browser.fillIn("/cases/new", fields("new")).body().contains("take another one"));
    }

    @Test
    void theLargestCaseThereCanBe_goesThroughTheForm() throws Exception {
        Browser browser = clinic.signedIn(SharedClinic.SPECIALIST);
        Map<String, String> fields = fields("form-07");
        fields.put("limbs[1].side", "right");
        for (int leg = 0; leg < 2; leg++) {
            for (int at = 0; at < CaseFile.MOST_SEGMENTS; at++) {
                fields.putAll(segment(leg, at));
            }
        }
        HttpResponse<String> saved = browser.fillIn("/cases/new", fields);
        assertEquals(303, saved.statusCode(), saved.body());
        assertEquals(
                CaseFile.MOST_SEGMENTS,
                read("form-07").limbs().get(1).segments().size());
        String page = browser.get("/cases/form-07/edit").body();
        int count = page.split(" name=\"", -1).length;
        assertTrue(count < 6000, "the form sends up to " + count + " fields");
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("style="));
    }

    private static Map<String, String> fields(String caseRef) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("do", "save");
        fields.put("seen", "0");
        fields.put("caseRef", caseRef);
        fields.put("patient.ageYears", "54");
        fields.put("patient.weightKg", "");
        fields.put("patient.allergies", "");
        fields.put("limbs[0].side", "left");
        fields.putAll(segment(0, 0));
        return fields;
    }

    private static Map<String, String> segment(int leg, int at) {
        String block = "limbs[" + leg + "].segments[" + at + "].";
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put(block + "ref", "S" + leg + "-" + at);
        fields.put(block + "vein", "great-saphenous");
        fields.put(block + "level", "thigh");
        fields.put(block + "lumenDiameterMm", "6.4");
        fields.put(block + "wallThicknessMm", "0.38");
        fields.put(block + "measured.inSpasm", "");
        return fields;
    }

    private CaseFile read(String caseRef) {
        String json = clinic.store.cases().latest(caseRef).orElseThrow().json();
        return Tunica.shipped().readCase("case", json.getBytes(StandardCharsets.UTF_8));
    }
}
