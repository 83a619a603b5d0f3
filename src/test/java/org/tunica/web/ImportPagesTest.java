package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.tunica.CaseTree;

/** A case file or a record opens in the form; what cannot be taken over is told, and nothing is saved. */
@ExtendWith(SharedClinic.class)
class ImportPagesTest {
    private final Clinic clinic = SharedClinic.clinic();

    @Test
    void aFaultyCaseFile_opensWithItsFaultsAtTheirFieldsAndWhatHasNone() throws Exception {
        String faulty = new String(
                CaseTree.demo("straight-thigh-trunk")
                        .set("caseRef", "import-01")
                        .set("limbs.0.segments.0.lumenDiameterMm", -1)
                        .set("patient.shoeSize", "<b>41</b>")
                        .bytes(),
                StandardCharsets.UTF_8);
        HttpResponse<String> opened = take(Map.of("text", faulty));
        assertEquals(200, opened.statusCode());
        String page = opened.body();
        assertTrue(page.contains("action=\"/cases/new\""), page);
        assertTrue(page.contains("id=\"field-limbs-0-segments-0-lumenDiameterMm-fault\""), page);
        assertTrue(page.contains("patient.shoeSize: is not a field of this object"), page);
        assertTrue(page.contains("value=\"import-01\""), page);
        assertTrue(clinic.store.cases().latest("import-01").isEmpty());
    }

    @Test
    void aRecord_fillsTheFieldsItCanAndListsTheRest() throws Exception {
        // the clock of the clinic stands before the days of this invented record
        String record =
                Files.readString(Path.of("knowledge/demo/fhir/record.json")).replace("2026-03-", "2026-02-");
        HttpResponse<String> opened = take(Map.of("text", record, "caseRef", "import-02"));
        assertEquals(200, opened.statusCode(), opened.body());
        String page = opened.body();
        assertTrue(page.contains("name=\"patient.ageYears\" type=\"text\" value=\"64\""), page);
        assertTrue(page.contains("name=\"patient.sex\" value=\"female\" checked"), page);
        assertTrue(page.contains("Not taken over: Observation/wall-new"), page);
        assertTrue(page.contains("name=\"limbs[0].segments[0].ref\""), page);
        assertTrue(page.contains("value=\"import-02\""), page);
        assertFalse(page.contains("1961-09-02"), page);
        assertTrue(clinic.store.cases().latest("import-02").isEmpty());
    }

    @Test
    void whatIsNeither_comesBackWhole() throws Exception {
        HttpResponse<String> refused = take(Map.of("text", "{\"a\": <1>", "caseRef", "import-03"));
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("is not readable JSON at line 1"), refused.body());
        assertTrue(refused.body().contains("{\"a\": &lt;1&gt;"), refused.body());
        assertTrue(refused.body().contains("value=\"import-03\""), refused.body());
    }

    @Test
    void aTextTooLarge_isRefusedBeforeItIsRead() throws Exception {
        HttpResponse<String> refused = take(Map.of("text", "[" + "\"\",".repeat(400_000) + "1]"));
        assertEquals(413, refused.statusCode());
    }

    private HttpResponse<String> take(Map<String, String> fields) throws Exception {
        return clinic.signedIn(SharedClinic.SPECIALIST).fillIn("/cases/import", fields);
    }
}
