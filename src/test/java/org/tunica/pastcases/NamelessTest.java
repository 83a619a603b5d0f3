package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;

/** An open case without the person, by the same decisions as for past cases. */
class NamelessTest {
    private static final Tunica TUNICA = Tunica.shipped();

    private static CaseFile named() {
        return TUNICA.readCase(
                "case",
                CaseTree.demo("both-legs-many-segments")
                        .set("caseRef", "quillfeather-1961")
                        .set("patient.ageYears", 63)
                        .set("patient.weightKg", 71.3)
                        .set("patient.heightCm", 168)
                        .set("limbs.0.segments.0.ref", "of-Quillfeather")
                        .bytes());
    }

    @Test
    void ageAndWeightAreBandsAndNoNameStays() {
        NamelessCase nameless = TUNICA.pastCases().nameless(named(), "m-0123456789ab");
        assertEquals("60-69", nameless.ageBandYears().orElseThrow().toString());
        assertEquals("70-79", nameless.weightBandKg().orElseThrow().toString());
        assertEquals(OptionalDouble.empty(), nameless.caseFile().patient().ageYears());
        assertEquals(OptionalDouble.empty(), nameless.caseFile().patient().weightKg());
        assertEquals(OptionalDouble.empty(), nameless.caseFile().patient().heightCm());
        String json = TUNICA.toJson(nameless.caseFile());
        assertFalse(json.contains("uillfeather"), json);
        assertTrue(json.contains("m-0123456789ab"), json);
    }

    @Test
    void segmentsAreCountedLegByLeg() {
        Map<String, String> names = Nameless.names(named());
        assertEquals("L1", names.get("of-Quillfeather"));
        assertEquals(
                List.of("L1", "L2", "L3", "R1", "R2", "R3"),
                names.values().stream().sorted().toList());
    }

    @Test
    void measurementsAreThoseOfAPastCaseOfTheSame() {
        CaseFile rounded =
                TUNICA.pastCases().nameless(named(), "m-0123456789ab").caseFile();
        CaseFile again = TUNICA.readCase("case", TUNICA.toJson(rounded).getBytes(StandardCharsets.UTF_8));
        assertEquals(
                rounded,
                TUNICA.pastCases().nameless(again, "m-0123456789ab").caseFile(),
                "what is rounded once stays as it is");
    }

    @Test
    void ofATextOnlyClinicalWordsAndMeasurementsStay() {
        String scrubbed = TUNICA.pastCases().scrubbed("Mrs Quillfeather of Harbour Lane, wall 0.4 mm");
        assertFalse(scrubbed.contains("uillfeather") || scrubbed.contains("arbour"), scrubbed);
        assertTrue(scrubbed.contains("0.4 mm"), scrubbed);
    }
}
