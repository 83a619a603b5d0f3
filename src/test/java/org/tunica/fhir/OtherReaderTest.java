package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.GuidanceResponse;
import org.hl7.fhir.r4.model.Provenance;
import org.hl7.fhir.r4.model.RequestGroup;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tunica.CaseTree;
import org.tunica.casefile.CaseFile;
import org.tunica.plan.Advice;
import tools.jackson.databind.node.ObjectNode;

/** Another program that knows the whole standard reads what is written here, and finds nothing wrong with it. */
class OtherReaderTest {
    private static final Instant NOW = Instant.parse("2026-03-20T10:00:00Z");

    /** Cases whose advice differs most: ranked, waiting for a measurement, nothing ranked, several segments. */
    static List<String> fewCases() {
        return List.of("straight-thigh-trunk", "missing-wall-thickness", "pregnancy");
    }

    static Stream<String> allCases() {
        return CaseTree.demoFiles().stream()
                .map(Path::getFileName)
                .map(name -> name.toString().replace(".json", ""));
    }

    @ParameterizedTest
    @MethodSource("fewCases")
    void advice_isValid(String name) {
        assertEquals(List.of(), OtherReader.errors(advice(name).toString()));
    }

    @Tag("deep")
    @ParameterizedTest
    @MethodSource("allCases")
    void adviceAndRecordOfEveryDemoCase_areValid(String name) {
        assertEquals(List.of(), OtherReader.errors(advice(name).toString()));
        assertEquals(List.of(), OtherReader.errors(record(name).toString()));
    }

    /** Reading is quick, judging is not: every case is read with nothing unknown in it, a few are judged. */
    @ParameterizedTest
    @MethodSource("allCases")
    void theRecordOfEveryDemoCase_isReadWholly(String name) {
        String written = record(name).toString();
        Translated back = new FhirTranslator(DemoSite.TUNICA, DemoSite.roomOf(CaseTree.demo(name)))
                .translate(
                        "record",
                        DemoSite.JSON.readTree(OtherReader.again(written)),
                        DemoSite.DAY,
                        caseOf(name).caseRef());
        assertEquals(caseOf(name), back.caseFile());
    }

    @Test
    void aRecord_isValid() {
        assertEquals(
                List.of(), OtherReader.errors(record("missing-wall-thickness").toString()));
        assertEquals(List.of(), OtherReader.errors(new String(DemoSite.file("record.json"))));
    }

    @Test
    void ourCodeSystems_areValid() {
        assertEquals(
                List.of(), OtherReader.errors(LocalCodes.bundle(DemoSite.TUNICA).toString()));
    }

    /** Otherwise an empty list above would show nothing. */
    @Test
    void whatIsWrong_isNoticed() {
        ObjectNode bundle = advice("missing-wall-thickness");
        ((ObjectNode) bundle.at("/entry/0/resource")).put("status", "perhaps");
        ((ObjectNode) bundle.at("/entry/1/resource")).remove("intent");
        List<String> errors = OtherReader.errors(bundle.toString());
        assertTrue(errors.stream().anyMatch(error -> error.contains("perhaps")), errors::toString);
        assertTrue(errors.stream().anyMatch(error -> error.contains("intent")), errors::toString);
        ObjectNode record = record("missing-wall-thickness");
        ((ObjectNode) record.findValue("valueQuantity")).put("code", "millimetre");
        assertFalse(OtherReader.errors(record.toString()).isEmpty());
    }

    @Test
    void aMissingWall_isADataRequirement_andStillAProposal() {
        Bundle bundle =
                (Bundle) OtherReader.read(advice("missing-wall-thickness").toString());
        GuidanceResponse guidance = (GuidanceResponse) bundle.getEntry().get(0).getResource();
        assertEquals(GuidanceResponse.GuidanceResponseStatus.DATAREQUESTED, guidance.getStatus());
        assertEquals(
                "wall-thickness",
                guidance.getDataRequirementFirstRep()
                        .getCodeFilterFirstRep()
                        .getCodeFirstRep()
                        .getCode());
        assertEquals(
                "L1",
                guidance.getDataRequirementFirstRep()
                        .getExtensionByUrl("urn:tunica:segment")
                        .getValue()
                        .primitiveValue());
        RequestGroup group = (RequestGroup) bundle.getEntry().get(1).getResource();
        assertEquals(RequestGroup.RequestIntent.PROPOSAL, group.getIntent());
        assertEquals(
                RequestGroup.ActionSelectionBehavior.ATMOSTONE,
                group.getActionFirstRep().getSelectionBehavior());
    }

    @Test
    void nothingToRankBeforeItIsMeasured_isDataRequired_withoutAProposal() {
        CaseTree tree = CaseTree.demo("missing-wall-thickness")
                .set("limbs.0.segments.0.lumenDiameterMm", null)
                .set("room.devices", List.of("laser-1470-radial", "foam-polidocanol"));
        Bundle bundle = (Bundle) OtherReader.read(advice(tree).toString());
        GuidanceResponse guidance = (GuidanceResponse) bundle.getEntry().get(0).getResource();
        assertEquals(GuidanceResponse.GuidanceResponseStatus.DATAREQUIRED, guidance.getStatus());
        assertTrue(bundle.getEntry().stream().noneMatch(entry -> entry.getResource() instanceof RequestGroup));
    }

    @Test
    void everyProposal_leavesTheChoice() {
        fewCases()
                .forEach(name -> advice(name)
                        .findValues("selectionBehavior")
                        .forEach(behaviour -> assertEquals("at-most-one", behaviour.stringValue())));
        advice("straight-thigh-trunk")
                .findValues("requiredBehavior")
                .forEach(behaviour -> assertEquals("could", behaviour.stringValue()));
    }

    @Test
    void provenance_namesReleaseAndDigest() {
        Bundle bundle = (Bundle) OtherReader.read(advice("straight-thigh-trunk").toString());
        Provenance provenance = bundle.getEntry().stream()
                .map(Bundle.BundleEntryComponent::getResource)
                .filter(Provenance.class::isInstance)
                .map(Provenance.class::cast)
                .findFirst()
                .orElseThrow();
        assertEquals(
                advised("straight-thigh-trunk").release().digest(),
                provenance.getEntity().get(1).getWhat().getIdentifier().getValue());
        assertEquals(2, provenance.getTarget().size());
    }

    @Test
    void sameAdviceAndOccasion_giveTheSameBytes() {
        assertEquals(
                advice("straight-thigh-trunk").toString(),
                advice("straight-thigh-trunk").toString());
    }

    private static CaseFile caseOf(String name) {
        return DemoSite.TUNICA.readCase(name, CaseTree.demo(name).bytes());
    }

    private static Advice advised(String name) {
        return DemoSite.TUNICA.advise(caseOf(name));
    }

    private static ObjectNode record(String name) {
        return RecordWriter.bundle(DemoSite.TUNICA, caseOf(name), "2026-03-05");
    }

    private static ObjectNode advice(String name) {
        return advice(CaseTree.demo(name));
    }

    private static ObjectNode advice(CaseTree tree) {
        return AdviceResources.bundle(
                DemoSite.TUNICA,
                DemoSite.roomOf(tree),
                DemoSite.TUNICA.advise(DemoSite.TUNICA.readCase("case", tree.bytes())),
                new AdviceResources.Occasion("Patient/p21", "Practitioner/d4", NOW, uuids()));
    }

    /** The same names every time. */
    static Supplier<String> uuids() {
        int[] next = {0};
        return () -> String.format("00000000-0000-4000-8000-%012d", ++next[0]);
    }
}
