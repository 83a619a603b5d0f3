package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** Records and hooks from the command line: results to one output, what was not used and what is wrong to the other. */
class FhirCommandTest {
    private static final String DEMO = "knowledge/demo/fhir/";
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void fhir_printsTheCase_andWhatWasNotUsed() {
        assertEquals(0, run("fhir", DEMO + "record.json", "--site", DEMO + "site.yaml", "--day", "2026-03-20"));
        assertTrue(out.toString().contains("\"wallThicknessMm\" : 0.41"), out::toString);
        assertTrue(err.toString().contains("does not give its unit"), err::toString);
    }

    @Test
    void fhir_withoutASite_saysWhatIsMissing() {
        assertEquals(2, run("fhir", DEMO + "record.json"));
        assertTrue(err.toString().contains("--site: must be given"), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void fhir_refusesWhatIsNoRecord_withItsFaults() {
        assertEquals(2, run("fhir", DEMO + "feedback.json", "--site", DEMO + "site.yaml"));
        assertTrue(err.toString().contains("$.limbs: must hold at least one entry"), err::toString);
    }

    @Test
    void fhir_showsARecordForACase_andOurCodes() {
        assertEquals(0, run("fhir", "--example-of", "knowledge/demo/pregnancy.json", "--day", "2026-03-20"));
        assertTrue(out.toString().contains("urn:tunica:measure"), out::toString);
        assertEquals(0, run("fhir", "--codes"));
        assertTrue(out.toString().contains("\"CodeSystem\""), out::toString);
    }

    @Test
    void hook_saysThatDataAreMissing() {
        assertEquals(0, run("hook", DEMO + "patient-view-without-scan.json", "--site", DEMO + "site.yaml"));
        assertTrue(err.toString().contains("412"), err::toString);
        assertTrue(out.toString().contains("OperationOutcome"), out::toString);
    }

    @Test
    void hook_tellsWhatIsOffered_andHowItLooks() {
        assertEquals(0, run("hook", "--discovery", "--site", DEMO + "site.yaml"));
        assertTrue(out.toString().contains("\"services\""), out::toString);
        assertEquals(0, run("hook", "--schema", "response"));
        assertTrue(out.toString().contains("urn:tunica:schema:cds-hooks:response"), out::toString);
        assertEquals(0, run("hook", "--feedback", DEMO + "feedback.json", "--site", DEMO + "site.yaml"));
        assertTrue(out.toString().contains("patient-refuses"), out::toString);
    }

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }
}
