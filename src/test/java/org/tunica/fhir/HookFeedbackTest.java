package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Feedback is read in both forms that are about, and written in the one of the standard. */
class HookFeedbackTest {
    private static final String CARD = "4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01";

    @Test
    void flatAndNestedReason_areTheSame() {
        HookFeedback nested =
                read("{'reason':{'system':'urn:x','code':'no','display':'n'},'userComment':'c'}", "10:11:12Z");
        HookFeedback flat = read("{'system':'urn:x','code':'no','userComment':'c'}", "10:11:12Z");
        assertEquals(nested, flat);
        assertEquals(
                new HookFeedback.Reason(Optional.of("urn:x"), Optional.of("no"), Optional.of("c")),
                nested.entries().get(0).reason().orElseThrow());
        assertEquals(
                "{\"reason\":{\"code\":\"no\",\"system\":\"urn:x\"},\"userComment\":\"c\"}",
                flat.toJson().findValue("overrideReason").toString());
    }

    @Test
    void theSameMessageTwice_hasOneKey_whateverZoneItIsWrittenIn() {
        String key = CARD + "|overridden|2026-03-20T10:11:12Z";
        assertEquals(
                key, read("{'userComment':'c'}", "10:11:12Z").entries().get(0).key());
        assertEquals(
                key,
                read("{'userComment':'c'}", "11:11:12+01:00").entries().get(0).key());
    }

    @Test
    void whatIsWritten_isReadAgain() {
        HookFeedback read = HookFeedback.read("feedback", DemoSite.file("feedback.json"));
        assertEquals(3, read.entries().size());
        assertEquals(read, HookFeedback.read("again", read.toJson().toString().getBytes(StandardCharsets.UTF_8)));
        assertEquals(
                List.of("4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e02"),
                read.entries().get(0).acceptedSuggestions());
    }

    private static HookFeedback read(String reason, String time) {
        String json = "{'feedback':[{'card':'" + CARD + "','outcome':'overridden','overrideReason':" + reason
                + ",'outcomeTimestamp':'2026-03-20T" + time + "'}]}";
        return HookFeedback.read("feedback", json.replace('\'', '"').getBytes(StandardCharsets.UTF_8));
    }
}
