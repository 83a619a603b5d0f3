package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.Segment;

/** What a record tells goes into the case; what it does not tell, or not plainly, is listed and never guessed. */
class FhirTranslatorTest {
    private static final String QUANTITY = "{\"value\":%s,\"system\":\"http://unitsofmeasure.org\",\"code\":\"%s\"}";

    @Test
    void theDemoRecord_givesTheCaseOfItsNumbers() {
        Translated read = new FhirTranslator(DemoSite.TUNICA, DemoSite.shown())
                .translate("record", DemoSite.file("record.json"), DemoSite.DAY, "larkspur-21");
        Patient patient = read.caseFile().patient();
        assertEquals(OptionalDouble.of(64), patient.ageYears());
        assertEquals(OptionalDouble.of(73.93555631), patient.weightKg());
        assertEquals(Optional.of(Set.of()), patient.allergies());
        Limb left = read.caseFile().limbs().get(0);
        assertEquals(Optional.of(Limb.CeapClass.C4A), left.ceapClass());
        assertEquals(OptionalDouble.of(1.04), left.ankleBrachialIndex());
        assertEquals(Optional.of(Limb.DeepVeins.NORMAL), left.deepVeins());
        Segment thigh = left.segments().get(0);
        assertEquals(OptionalDouble.of(0.41), thigh.wallThicknessMm());
        assertEquals(OptionalDouble.of(36), thigh.straightCm());
        assertEquals(OptionalDouble.of(2.1), thigh.refluxSeconds());
        Segment calf = left.segments().get(1);
        assertEquals(OptionalDouble.empty(), calf.wallThicknessMm());
        assertEquals(OptionalDouble.of(10.16), calf.depthToSkinMm());
        assertEquals(
                List.of(
                        "AllergyIntolerance/a1",
                        "DiagnosticReport/r1",
                        "Observation/prelim",
                        "Observation/scan-l2",
                        "Observation/wall-old"),
                read.unused().stream().map(Unused::resource).sorted().toList());
        assertTrue(read.ages().stream()
                .anyMatch(age -> age.path().equals("limbs[0].segments[0].wallThicknessMm")
                        && age.when().equals("2026-03-05T09:52:00+01:00")
                        && age.resource().equals("Observation/wall-new")));
    }

    @ParameterizedTest
    @CsvSource({
        "furlong, the unit furlong is not one this program converts",
        "MM, the unit MM is not one this program converts",
        "s, the unit s does not measure what is asked in mm"
    })
    void anotherUnit_isRefusedByName_andTheValueStaysUnknown(String unit, String reason) {
        Translated read = Record.sound()
                .component("wall-thickness", one -> one.set("valueQuantity", json(QUANTITY.formatted("1", unit))))
                .read();
        assertEquals(OptionalDouble.empty(), segment(read).wallThicknessMm());
        assertEquals(List.of(reason), read.unused().stream().map(Unused::reason).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"value\":1,\"unit\":\"mm\"} | does not give its unit as a code of http://unitsofmeasure.org",
                "{\"value\":1,\"comparator\":\">\",\"system\":\"http://unitsofmeasure.org\",\"code\":\"mm\"} | is no measured value but a bound (it has a comparator)",
                "{\"value\":\"1\",\"system\":\"http://unitsofmeasure.org\",\"code\":\"mm\"} | has no number as its value",
                "{} | has no number as its value"
            })
    void aQuantityThatIsNotPlain_isListed(String quantity, String reason) {
        Translated read = Record.sound()
                .component("wall-thickness", one -> one.set("valueQuantity", json(quantity)))
                .read();
        assertEquals(OptionalDouble.empty(), segment(read).wallThicknessMm());
        assertEquals(List.of(reason), read.unused().stream().map(Unused::reason).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "1961-03-20, 2026-03-20, 65",
        "1961-03-21, 2026-03-20, 64",
        "2004-02-29, 2030-02-28, 25",
        "1961-01, 2026-03-20, 65",
        "1920-01-01, 2026-03-20, 90",
        "1936-03-20, 2026-03-20, 90"
    })
    void age_isThatOfTheDay_cutAtNinety(String born, LocalDate day, double years) {
        Record record = Record.sound().without("age").resource("patient", one -> one.put("birthDate", born));
        Translated read = new FhirTranslator(DemoSite.TUNICA, DemoSite.with(""))
                .translate("record", record.tree(), day, "case-1");
        assertEquals(OptionalDouble.of(years), read.caseFile().patient().ageYears());
        assertFalse(DemoSite.TUNICA.toJson(read.caseFile()).contains(born));
    }

    @ParameterizedTest
    @CsvSource({
        "1961, does not tell the age to the year",
        "1961-03, does not tell the age to the year",
        "2031-01-01, is after the day of this reading",
        "12/03/1961, is not written as a date"
    })
    void aBirthDateThatDoesNotTellTheAge_isListed(String born, String reason) {
        Translated read = Record.sound()
                .without("age")
                .resource("patient", one -> one.put("birthDate", born))
                .read();
        assertEquals(OptionalDouble.empty(), read.caseFile().patient().ageYears());
        assertEquals(List.of(reason), read.unused().stream().map(Unused::reason).toList());
    }

    @Test
    void aHistoryNobodyCallsComplete_isUnknown_withWhatWasRecognisedListed() {
        Translated read = Record.sound()
                .without("conditions-complete")
                .add(condition("migraine-with-aura", "active", "confirmed"))
                .read();
        assertEquals(Optional.empty(), read.caseFile().patient().conditions());
        assertTrue(read.unused().get(0).reason().startsWith("recognised, but nothing says that the list is complete"));
    }

    @Test
    void anEntryNobodyUnderstands_leavesTheHistoryUnknown_unlessTheSiteAnswersForIt() {
        String strange =
                "{\"resourceType\":\"Condition\",\"code\":{\"coding\":[{\"system\":\"urn:x\",\"code\":\"y\"}]},"
                        + "\"subject\":{\"reference\":\"Patient/patient\"}}";
        assertEquals(
                Optional.empty(),
                Record.sound().add(strange).read().caseFile().patient().conditions());
        Site trusting = DemoSite.with("trustedLists: [conditions]\n");
        assertEquals(
                Optional.of(Set.of("pacemaker")),
                Record.at(trusting)
                        .add(strange)
                        .add(condition("pacemaker", "active", "confirmed"))
                        .read()
                        .caseFile()
                        .patient()
                        .conditions());
    }

    @ParameterizedTest
    @CsvSource({"resolved, confirmed", "active, unconfirmed", "inactive, confirmed"})
    void anEntryThatMayNotHold_leavesTheHistoryUnknown(String clinical, String verification) {
        Translated read = Record.sound()
                .add(condition("deep-vein-thrombosis-acute", clinical, verification))
                .read();
        assertEquals(Optional.empty(), read.caseFile().patient().conditions());
    }

    @Test
    void aRefutedEntry_isPassedOver() {
        Translated read = Record.sound()
                .add(condition("deep-vein-thrombosis-acute", "active", "refuted"))
                .read();
        assertEquals(Optional.of(Set.of()), read.caseFile().patient().conditions());
        assertEquals(
                List.of("is refuted"),
                read.unused().stream().map(Unused::reason).toList());
    }

    @Test
    void noneAndSome_contradictEachOther() {
        List<String> faults = faults(Record.sound()
                .add(condition("none", "active", "confirmed"))
                .add(condition("pacemaker", "active", "confirmed")));
        assertTrue(faults.get(0).contains("says that there are no conditions and lists some"), faults::toString);
    }

    @Test
    void aCodeOfASystemSwitchedOff_saysSo_andCountsOnceItIsOn() {
        String snomed = "{\"coding\":[{\"system\":\"http://snomed.info/sct\",\"code\":\"397413000\"}]}";
        Record off = Record.sound().component("lumen-diameter", one -> one.set("code", json(snomed)));
        assertEquals(OptionalDouble.empty(), segment(off.read()).lumenDiameterMm());
        assertEquals(
                List.of(
                        "the code http://snomed.info/sct|397413000 belongs to snomed, which is switched off in the code map"),
                off.read().unused().stream().map(Unused::reason).toList());
        Site on = DemoSite.with("codes:\n  systems:\n    snomed: { uri: \"http://snomed.info/sct\", on: true }\n");
        assertTrue(segment(Record.at(on)
                        .component("lumen-diameter", one -> one.set("code", json(snomed)))
                        .read())
                .lumenDiameterMm()
                .isPresent());
    }

    @Test
    void valuesOfOneDay_thatDiffer_areAFaultNamingBoth() {
        String second =
                "{\"resourceType\":\"Observation\",\"id\":\"w2\",\"status\":\"final\",\"effectiveDateTime\":\"2026-03-05\","
                        + "\"code\":{\"coding\":[{\"system\":\"urn:tunica:measure\",\"code\":\"wall-thickness\"}]},"
                        + "\"subject\":{\"reference\":\"Patient/patient\"},\"valueQuantity\":"
                        + QUANTITY.formatted("0.9", "mm") + "}";
        List<String> faults = faults(Record.sound()
                .add(second)
                .resource(
                        "segment-L1",
                        one -> one.putArray("hasMember")
                                .addObject()
                                .put("reference", "https://elsewhere/fhir/Observation/w2")));
        assertTrue(faults.get(0).contains("none is known to be the newest"), faults::toString);
        assertTrue(faults.get(0).contains("0.9 of 2026-03-05 (Observation/w2)"), faults::toString);
    }

    @Test
    void aValueOutsideWhatIsPlausible_isAFaultWithItsOrigin() {
        List<String> faults = faults(Record.sound()
                .component("wall-thickness", one -> one.set("valueQuantity", json(QUANTITY.formatted("41", "cm")))));
        assertTrue(faults.get(0).contains("from Observation/segment-L1 at $.entry["), faults::toString);
    }

    @Test
    void anotherPatient_makesTheWholeAMixUp() {
        List<String> faults = faults(Record.sound()
                .resource("segment-L1", one -> one.putObject("subject").put("reference", "Patient/somebody-else")));
        assertTrue(faults.stream().anyMatch(fault -> fault.contains("belongs to another patient")), faults::toString);
    }

    @Test
    void aSegmentOfUnknownPlace_isLeftOut_andNamed() {
        List<String> faults = faults(Record.sound()
                .component("vein", one -> one.set("valueCodeableConcept", json("{\"text\":\"a vein\"}"))));
        assertTrue(
                faults.stream().anyMatch(fault -> fault.contains("the segment is left out: it does not tell vein")),
                faults::toString);
    }

    @Test
    void whatComesTomorrow_isNotBelievedToday() {
        Translated read = Record.sound()
                .resource("body-weight", one -> one.put("effectiveDateTime", "2027-01-01"))
                .read();
        assertEquals(OptionalDouble.empty(), read.caseFile().patient().weightKg());
    }

    private static Segment segment(Translated read) {
        return read.caseFile().limbs().get(0).segments().get(0);
    }

    private static List<String> faults(Record record) {
        return assertThrows(FaultyInput.class, record::read).faults().stream()
                .map(Object::toString)
                .toList();
    }

    private static String condition(String word, String clinical, String verification) {
        return ("{'resourceType':'Condition','id':'c-" + word
                        + "','code':{'coding':[{'system':'urn:tunica:condition','code':'"
                        + word + "'}]},'subject':{'reference':'Patient/patient'},'clinicalStatus':{'coding':[{'system':"
                        + "'http://terminology.hl7.org/CodeSystem/condition-clinical','code':'" + clinical
                        + "'}]},'verificationStatus':{'coding':[{'system':"
                        + "'http://terminology.hl7.org/CodeSystem/condition-ver-status','code':'" + verification
                        + "'}]}}")
                .replace('\'', '"');
    }

    private static tools.jackson.databind.JsonNode json(String text) {
        return DemoSite.JSON.readTree(text);
    }
}
