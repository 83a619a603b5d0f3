package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tunica.Cold;
import org.tunica.Tunica;
import org.tunica.fhir.HookRequest;
import org.tunica.fhir.HookSchema;
import org.tunica.fhir.HookService;
import org.tunica.fhir.Site;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Cards that go out before the heat is computed say so, rank nothing and still stop what a rule excludes. */
class CardsSoFarTest {
    /** Never asked for a whole advice here, so it has met no wall. */
    private static final Tunica FRESH = Cold.tunica();

    private static final HookService EARLY =
            new HookService(FRESH, Site.read("site.yaml", Wire.file("site.yaml"), FRESH), FRESH::adviseSoFar);

    @Test
    void anOrderWhoseHeatIsNotComputed_isNeitherWavedThroughNorRanked() {
        ObjectNode call = Wire.call("order-sign");
        JsonNode card = answer(call).at("/cards/0");
        assertTrue(
                card.get("summary")
                        .stringValue()
                        .endsWith("settings are still being computed; ask again or open the page"),
                card::toString);
        assertEquals("warning", card.get("indicator").stringValue());
        assertTrue(card.get("detail").stringValue().contains("so nothing is ranked"), card::toString);
        assertEquals(0, card.findValues("rank").size());
        assertEquals("in-part", card.findValue("computed").stringValue());
        assertFalse(card.findValue("awaited").isEmpty());
        assertFalse(card.toString().contains("\"update\""), "no other technique is offered before it is known");
    }

    @Test
    void whatARuleExcludesWhateverTheHeat_isCriticalAtOnce() {
        JsonNode early = answer(Wire.excludedOrder()).at("/cards/0");
        JsonNode whole = Wire.answer(Wire.excludedOrder()).body().at("/cards/0");
        assertEquals("critical", early.get("indicator").stringValue());
        assertEquals(whole.get("summary"), early.get("summary"));
    }

    @Test
    void aChartThatIsOpened_isToldHowManySegmentsAreStillComputed() {
        JsonNode card = answer(Wire.call("patient-view")).at("/cards/0");
        assertTrue(card.get("summary").stringValue().contains("settings still being computed for "), card::toString);
        assertEquals("info", card.get("indicator").stringValue());
    }

    @Test
    void theyKeepTheStandardToo() {
        for (String name : Wire.CALLS) {
            JsonNode answer = answer(Wire.call(name));
            assertEquals(List.of(), StandardInvariants.ofResponse(answer));
            assertEquals(
                    List.of(),
                    SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                            .getSchema(HookSchema.RESPONSE.text(), InputFormat.JSON)
                            .validate(answer.toString(), InputFormat.JSON));
        }
    }

    private static JsonNode answer(JsonNode call) {
        int[] names = {0};
        return EARLY.answer(
                        HookRequest.read("call", call.toString().getBytes()),
                        Wire.DAY,
                        () -> String.format("00000000-0000-4000-9000-%012d", ++names[0]))
                .body();
    }
}
