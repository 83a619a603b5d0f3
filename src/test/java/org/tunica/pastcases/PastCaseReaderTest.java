package org.tunica.pastcases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

class PastCaseReaderTest {
    private static final Tunica TUNICA = Tunica.shipped();

    /** An invented case: nobody was ever treated like this. */
    static final String INVENTED = """
            {"format":"tunica-past/1","id":"p-0123456789abcdef01234567","invented":true,"site":"site-a1","year":2024,\
            "ageBandYears":"60-69","weightBandKg":"70-79",\
            "caseFile":{"format":"tunica-case/1","caseRef":"p-0123456789abcdef01234567",\
            "patient":{"sex":"female","pregnant":false,"canLie":{},"allergies":[],"conditions":["migraine-with-aura"]},\
            "room":{"devices":["laser-1470-radial","foam-polidocanol"],"tumescent":{"lidocainePercent":0.1}},\
            "limbs":[{"side":"left","ceapClass":"C4a","segments":[{"ref":"L1","vein":"great-saphenous","level":"thigh",\
            "lengthCm":38.0,"lumenDiameterMm":7.4,"wallThicknessMm":0.62,"measured":{"posture":"standing"},\
            "nerve":{"name":"saphenous","gapMm":12.0}}]}]},\
            "delivered":[{"format":"tunica-delivered/1","caseRef":"p-0123456789abcdef01234567","totals":{},"segments":[\
            {"ref":"L1","technique":"laser-1470-radial","access":{},"treatedLengthCm":36.0,\
            "heat":{"powerW":10.0,"pullbackSecondsPerCm":8.0},"incidents":[],"closingDuplex":{"deepVeinOpen":true}}],\
            "aftercare":{}}],\
            "followUp":{"format":"tunica-followup/1","caseRef":"p-0123456789abcdef01234567","limbs":[{"side":"left",\
            "ceapBefore":"C2,4as,Ep,As(GSVa),Pr","treated":[{"ref":"L1","treatedLengthCm":36.0,\
            "closure":"adhesive-open-stump"}],"visits":[{"daysAfter":365,"segments":[{"ref":"L1","openLengthCm":0.0,\
            "refluxSeconds":0.0,"complications":[]}]}]}]},\
            "notes":["trunk closed over 36 cm, [...] no pain"]}""";

    @Test
    void pastCase_readsBackTheSame() {
        PastCase read = read(INVENTED);
        String written = TUNICA.pastCases().toLine(read);
        assertEquals(read, read(written));
        assertEquals(written, TUNICA.pastCases().toLine(read(written)), "the same bytes again");
        assertTrue(written.indexOf('\n') < 0, "one line");
    }

    @Test
    void theCaseAlone_isTheSameCaseAndCheckedAsStrictly() {
        PastCaseReader reader = new PastCaseReader(TUNICA.knowledge());
        assertEquals(read(INVENTED).caseFile(), reader.readCase("it", bytes(INVENTED)));
        String named = INVENTED.replace("\"sex\":\"female\"", "\"sex\":\"female\",\"ageYears\":61")
                .replace("\"caseRef\":\"p-0", "\"caseRef\":\"q-0");
        FaultyInput refused = assertThrows(FaultyInput.class, () -> reader.readCase("it", bytes(named)));
        assertEquals(
                List.of("$.caseFile.patient.ageYears", "$.caseFile.caseRef"),
                refused.faults().stream().map(Fault::place).toList());
    }

    private static byte[] bytes(String json) {
        return json.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void exactNumbersDaysPeopleAndFreeText_areRefusedEachWithItsPlace() {
        String named = INVENTED.replace(
                        "\"sex\":\"female\"", "\"sex\":\"female\",\"ageYears\":61,\"weightKg\":74,\"heightCm\":166")
                .replace(
                        "\"totals\":{}",
                        "\"totals\":{},\"date\":\"2024-03-02\",\"indication\":\"pain\","
                                + "\"people\":[{\"role\":\"operator\",\"initials\":\"AK\"}]")
                .replace("\"incidents\":[]", "\"incidents\":[],\"incidentNote\":\"slipped\"")
                .replace("\"aftercare\":{}", "\"aftercare\":{\"compression\":\"stocking\"}");
        assertEquals(
                List.of(
                        "$.caseFile.patient.ageYears",
                        "$.caseFile.patient.heightCm",
                        "$.caseFile.patient.weightKg",
                        "$.delivered[0].aftercare.compression",
                        "$.delivered[0].date",
                        "$.delivered[0].indication",
                        "$.delivered[0].people",
                        "$.delivered[0].segments[0].incidentNote"),
                places(named));
    }

    @Test
    void referenceOfTheCase_isTheRandomId() {
        assertEquals(
                List.of("$.followUp.caseRef"),
                places(INVENTED.replace(
                        "\"format\":\"tunica-followup/1\",\"caseRef\":\"p-0123456789abcdef01234567\"",
                        "\"format\":\"tunica-followup/1\",\"caseRef\":\"larkspur-01\"")));
    }

    @Test
    void namesInPlaceOfPseudonyms_areRefused() {
        assertEquals(
                List.of("$.ageBandYears", "$.id", "$.site", "$.year"),
                places(INVENTED.replace("\"id\":\"p-0123456789abcdef01234567\"", "\"id\":\"case of Monday\"")
                        .replace("site-a1", "Clinic at the river")
                        .replace("\"60-69\"", "\"sixty-one\"")
                        .replace("2024,", "20240,")));
    }

    @Test
    void noteThatTheScrubberWouldChange_isRefusedWithoutBeingShown() {
        String named = INVENTED.replace("no pain", "no pain, says Dr Short");
        assertEquals(List.of("$.notes[0]"), places(named));
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> read(named));
        assertTrue(!faulty.getMessage().contains("Short"), faulty.getMessage());
    }

    private static PastCase read(String text) {
        return TUNICA.pastCases().readPastCase("past case", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> places(String text) {
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> read(text));
        return faulty.faults().stream().map(Fault::place).sorted().toList();
    }
}
