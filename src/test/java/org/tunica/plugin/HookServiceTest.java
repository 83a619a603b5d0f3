package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.fhir.HookAnswer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What a record system sends is taken for what it is, and nothing is guessed in its place. */
class HookServiceTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "scan | text:<!DOCTYPE html><p>502 | scan holds a web page (HTML), probably an error page of the record system",
                "scan | text:not found | scan holds a text that is no resource",
                "scan | {'resourceType':'OperationOutcome','issue':[{'diagnostics':'server is down'}]} | scan holds an error of the record system instead: server is down",
                "scan | {'resourceType':'Patient','id':'p21'} | scan holds a Patient",
                "scan | [] | scan holds a list that is no Bundle",
                "scan | 7 | scan holds a bare value",
                "scan | {'resourceType':'Bundle','link':[{'relation':'next','url':'x'}]} | scan holds only the first page of what was found",
                "patient | null | patient holds nothing",
                "patient | {'resourceType':'Patient','id':'p22'} | patient holds another patient than context.patientId names"
            })
    void whatIsNoAnswer_isNamed(String key, String sent, String says) {
        ObjectNode call = Wire.call("patient-view");
        ((ObjectNode) call.get("prefetch")).set(key, Wire.read(json(sent)));
        HookAnswer answer = Wire.answer(call);
        assertTrue(answer instanceof HookAnswer.MissingData, answer::toString);
        assertEquals(
                "prefetch key " + says, answer.body().findValue("diagnostics").stringValue());
    }

    private static String json(String sent) {
        return sent.startsWith("text:") ? "\"" + sent.substring(5) + "\"" : sent.replace('\'', '"');
    }

    @Test
    void nothingSent_namesEveryKeyThatIsNeeded() {
        HookAnswer answer = Wire.answer((JsonNode) Wire.call("patient-view").without("prefetch"));
        assertEquals(2, answer.body().get("issue").size());
    }

    @Test
    void aScanThatFoundNothing_isQuiet() {
        ObjectNode call = Wire.call("patient-view");
        ((ObjectNode) call.get("prefetch")).putNull("scan");
        assertEquals("{\"cards\":[]}", Wire.answer(call).body().toString());
    }

    @Test
    void anOrderOfAnotherKind_isQuiet_whateverWasSent() {
        ObjectNode call = Wire.call("order-sign");
        call.remove("prefetch");
        call.at("/context/draftOrders/entry")
                .forEach(entry -> ((ObjectNode) entry.at("/resource/code/coding/0")).put("code", "knee-scan"));
        assertEquals("{\"cards\":[]}", Wire.answer(call).body().toString());
    }

    /** The record says that its conditions are complete, and then they are not sent: none in them means nothing. */
    @Test
    void aListThatWasNotSent_isUnknown_whateverElseIsSaidOfIt() {
        assertTrue(Wire.answered("patient-view").findValues("rank").size() > 1);
        ObjectNode call = Wire.call("patient-view");
        ((ObjectNode) call.get("prefetch")).remove("conditions");
        ObjectNode answer = Wire.answer(call).body();
        assertEquals(0, answer.findValues("rank").size());
        String detail = answer.at("/cards/0/detail").stringValue();
        assertTrue(detail.contains("`prefetch key conditions was not sent`"), detail);
        assertTrue(detail.contains("Not recorded: the history of conditions"), detail);
    }

    @Test
    void anOrderForASegmentThatWasNotScanned_isToldSo() {
        ObjectNode call = Wire.call("order-select");
        ((ObjectNode) call.at("/context/draftOrders/entry/0/resource"))
                .set(
                        "bodySite",
                        Wire.read("[{\"coding\":[{\"system\":\"urn:tunica:vein\",\"code\":\"perforator\"}]}]"));
        JsonNode card = Wire.answer(call).body().at("/cards/0");
        assertEquals("warning", card.get("indicator").stringValue());
        assertEquals(
                "The drafted closure names a segment that the scan on record does not hold",
                card.get("summary").stringValue());
    }

    @Test
    void onlyWhatWasJustPicked_isJudged() {
        ObjectNode call = Wire.call("order-sign").put("hook", "order-select");
        ((ObjectNode) call.get("context")).putArray("selections").add("ServiceRequest/o2");
        JsonNode cards = Wire.answer(call).body().get("cards");
        assertEquals(1, cards.size());
        assertTrue(cards.get(0).get("summary").stringValue().startsWith("LEFT L2"));
    }

    @Test
    void aTechniqueThatIsOpen_getsTheOptions_noneMarked() {
        ObjectNode call = Wire.call("order-select");
        ObjectNode coding = (ObjectNode) call.at("/context/draftOrders/entry/0/resource/code/coding/0");
        coding.put("system", "urn:tunica:order").put("code", "close-vein");
        JsonNode card = Wire.answer(call).body().at("/cards/0");
        assertEquals("info", card.get("indicator").stringValue());
        assertEquals(3, card.get("suggestions").size());
    }

    @Test
    void whatStandsWell_isNotTalkedOutOf() {
        JsonNode card = Wire.answered("order-sign").at("/cards/0");
        assertEquals("info", card.get("indicator").stringValue());
        assertFalse(card.has("suggestions"));
    }

    @Test
    void aRecordThatContradictsItself_isToldToThePerson_withoutAdvice() {
        ObjectNode call = Wire.call("order-sign");
        call.at("/prefetch/scan/entry").forEach(entry -> {
            if (entry.at("/resource/id").stringValue().equals("wall-new")) {
                ((ObjectNode) entry.at("/resource/valueQuantity"))
                        .put("value", 410)
                        .put("code", "cm");
            }
        });
        JsonNode card = Wire.answer(call).body().at("/cards/0");
        assertTrue(
                card.get("summary").stringValue().startsWith("The leg vein scan on record cannot be used"),
                card::toString);
        assertTrue(card.get("detail").stringValue().contains("from Observation/wall-new"), card::toString);
    }

    @Test
    void textFromOutside_isShownLiterally() {
        ObjectNode call = Wire.call("patient-view");
        ((ObjectNode) call.get("prefetch"))
                .set(
                        "allergies",
                        Wire.read("{\"resourceType\":\"OperationOutcome\",\"issue\":[{\"diagnostics\":"
                                + "\"`<script>x</script>` [here](http://evil.example)\\n\\n# gone\"}]}"));
        String detail = Wire.answer(call).body().at("/cards/0/detail").stringValue();
        assertTrue(detail.contains("'<script>x</script>' [here](http://evil.example)  # gone`"), detail);
    }

    @Test
    void anAccessToken_goesNowhere() {
        ObjectNode call = Wire.call("patient-view");
        call.putObject("fhirAuthorization").put("access_token", "secret-7f3").put("token_type", "Bearer");
        assertFalse(Wire.answer(call).body().toString().contains("secret-7f3"));
    }

    @Test
    void theSameCallAgain_hasTheSameFingerprint_andOtherNames() {
        ObjectNode once = Wire.answered("order-select");
        ObjectNode again = Wire.answer(Wire.call("order-select")).body();
        assertEquals(once.findValue("fingerprint"), again.findValue("fingerprint"));
        assertFalse(once.findValue("uuid").equals(again.findValue("uuid")));
        assertEquals(
                once.toString().replaceAll("00000000-0000-4000-8000-\\d{12}", "x"),
                again.toString().replaceAll("00000000-0000-4000-8000-\\d{12}", "x"));
    }
}
