package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tunica.casefile.FaultyInput;
import org.tunica.fhir.HookFeedback;
import org.tunica.fhir.HookRequest;
import org.tunica.fhir.HookSchema;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The published schemas accept what goes over the wire here and refuse what the readers refuse. */
class HookSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    @ParameterizedTest
    @EnumSource(HookSchema.class)
    void isASchema(HookSchema which) {
        Schema meta = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(which.text(), InputFormat.JSON));
    }

    @Test
    void acceptWhatGoesOverTheWire() {
        assertEquals(
                List.of(),
                faults(HookSchema.DISCOVERY, Wire.service().discovery().toString()));
        for (String name : Wire.CALLS) {
            assertEquals(List.of(), faults(HookSchema.REQUEST, Wire.call(name).toString()));
            assertEquals(
                    List.of(), faults(HookSchema.RESPONSE, Wire.answered(name).toString()));
        }
        assertEquals(List.of(), faults(HookSchema.FEEDBACK, new String(Wire.file("feedback.json"))));
    }

    /** What is done to a call, and whether reader and schema take it. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/hook|\"patient-seen\"|false",
                "/hook|null|false",
                "/hookInstance|\"7\"|false",
                "/context|[]|false",
                "/context/patientId|\"Patient/p21\"|false",
                "/context/patientId|7|false",
                "/context/userId|\"d4\"|false",
                "/context/encounterId|\"e/1\"|false",
                "/context/draftOrders|{\"resourceType\":\"Patient\"}|false",
                "/fhirServer|\"ftp://x\"|false",
                "/fhirAuthorization|{}|true",
                "/prefetch|\"none\"|false",
                "/prefetch|{}|true",
                "/prefetch/patient|null|true",
                "/strange|{\"a\":1}|true"
            })
    void agreeWithTheReaderOfCalls(String place, String value, boolean sound) {
        ObjectNode call = Wire.call("order-sign");
        int cut = place.lastIndexOf('/');
        ObjectNode holder = (ObjectNode) (cut == 0 ? call : call.at(place.substring(0, cut)));
        holder.set(place.substring(cut + 1), Wire.read(value));
        assertEquals(sound, faults(HookSchema.REQUEST, call.toString()).isEmpty());
        assertEquals(sound, reads(() -> HookRequest.read("call", new JsonMapper().writeValueAsBytes(call))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{}|false",
                "{\"feedback\":[]}|true",
                "{\"feedback\":[{}]}|false",
                "{\"feedback\":[{\"card\":\"x\",\"outcome\":\"overridden\",\"outcomeTimestamp\":\"2026-03-20T10:11:12Z\"}]}|false",
                "{\"feedback\":[{\"card\":\"4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01\",\"outcome\":\"overridden\",\"outcomeTimestamp\":\"2026-03-20T10:11:12Z\"}]}|true",
                "{\"feedback\":[{\"card\":\"4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01\",\"outcome\":\"overridden\",\"outcomeTimestamp\":\"2026-03-20\"}]}|false",
                "{\"feedback\":[{\"card\":\"4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01\",\"outcome\":\"accepted\",\"outcomeTimestamp\":\"2026-03-20T10:11:12Z\"}]}|false",
                "{\"feedback\":[{\"card\":\"4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01\",\"outcome\":\"overridden\",\"overrideReason\":{},\"outcomeTimestamp\":\"2026-03-20T10:11:12Z\"}]}|false",
                "{\"feedback\":[{\"card\":\"4c1f3a10-2c7d-4a7e-8a50-5a1d0f6b7e01\",\"outcome\":\"overridden\",\"overrideReason\":{\"userComment\":\"x\"},\"outcomeTimestamp\":\"2026-03-20T10:11:12Z\"}]}|true"
            })
    void agreeWithTheReaderOfFeedback(String json, boolean sound) {
        assertEquals(sound, faults(HookSchema.FEEDBACK, json).isEmpty());
        assertEquals(sound, reads(() -> HookFeedback.read("feedback", json.getBytes())));
    }

    @ParameterizedTest
    @CsvSource({
        "Patient/{{context.patientId}}, true",
        "Patient/{{userPatientId}}, true",
        "Patient/{{context.patient.id}}, false",
        "Patient/{context.patientId}, false",
        "Patient/{{today()}}, false",
        "Patient/{{patientId}}, false"
    })
    void aQueryWithATokenThatIsNoToken_isRefused(String query, boolean sound) {
        ObjectNode discovery = Wire.service().discovery();
        ((ObjectNode) discovery.at("/services/0/prefetch")).put("patient", query);
        assertEquals(sound, faults(HookSchema.DISCOVERY, discovery.toString()).isEmpty());
    }

    @Test
    void aSummaryOf140Characters_isRefused() {
        ObjectNode answer = Wire.answered("patient-view").deepCopy();
        ((ObjectNode) answer.at("/cards/0")).put("summary", "x".repeat(139));
        assertEquals(List.of(), faults(HookSchema.RESPONSE, answer.toString()));
        ((ObjectNode) answer.at("/cards/0")).put("summary", "x".repeat(140));
        assertFalse(faults(HookSchema.RESPONSE, answer.toString()).isEmpty());
    }

    private static List<?> faults(HookSchema which, String json) {
        return REGISTRY.getSchema(which.text(), InputFormat.JSON).validate(json, InputFormat.JSON);
    }

    private static boolean reads(Runnable reading) {
        try {
            reading.run();
            return true;
        } catch (FaultyInput e) {
            return false;
        }
    }
}
