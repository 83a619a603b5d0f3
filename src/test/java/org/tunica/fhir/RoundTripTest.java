package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.CaseTree;
import org.tunica.casefile.CaseFile;
import tools.jackson.databind.JsonNode;

/** A case written as a record and read back is the same case. */
class RoundTripTest {
    static List<Path> demos() {
        return CaseTree.demoFiles();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void demoCase_comesBackTheSame(Path file) {
        comesBack(CaseTree.demo(file.getFileName().toString().replace(".json", "")));
    }

    @Test
    void everyMeasureThereIs_comesBack() {
        CaseTree full = CaseTree.soundLeg()
                .set("patient.conditions", List.of("migraine-with-aura", "trunk-is-main-outflow"))
                .set("patient.allergies", List.of("cyanoacrylate"))
                .set("patient.preferences", List.of("avoid-repeat"))
                .set("patient.breastfeeding", false)
                .set("limbs.0.anklePressureMmHg", 120)
                .set("limbs.0.toePressureMmHg", 80.5)
                .set("limbs.0.trunkIsMainOutflow", true)
                .set("limbs.0.segments.0.lumenDiameterSdMm", 0.3)
                .set("limbs.0.segments.0.wallThicknessSdMm", 0.03)
                .set("limbs.0.segments.0.depthToSkinSdMm", 1)
                .set("limbs.0.segments.0.nerve.gapSdMm", 1)
                .set("limbs.0.segments.0.measured.inSpasm", true)
                .set("limbs.0.segments.0.measured.relaxedLumenDiameterMm", 8)
                .set("limbs.0.segments.0.chosen", "adhesive");
        assertEquals(Set.of(), missing(comesBack(full)));
    }

    /** Measures of which the record holds nothing. */
    private static Set<String> missing(JsonNode bundle) {
        Set<String> words = new TreeSet<>(
                List.of(Measure.values()).stream().map(Measure::word).toList());
        bundle.findValues("coding")
                .forEach(coding -> words.remove(coding.get(0).get("code").stringValue()));
        words.remove(Measure.SEX.word());
        return words;
    }

    private static JsonNode comesBack(CaseTree tree) {
        CaseFile whole = DemoSite.TUNICA.readCase("case", tree.bytes());
        JsonNode bundle = RecordWriter.bundle(DemoSite.TUNICA, whole, "2026-03-05");
        Translated back = new FhirTranslator(DemoSite.TUNICA, DemoSite.roomOf(tree))
                .translate("record", bundle, DemoSite.DAY, whole.caseRef());
        assertEquals(whole, back.caseFile());
        assertEquals(List.of(), back.unused());
        assertTrue(back.ages().stream()
                .allMatch(age -> age.when().equals("2026-03-05") || age.path().endsWith(".sex")));
        return bundle;
    }
}
