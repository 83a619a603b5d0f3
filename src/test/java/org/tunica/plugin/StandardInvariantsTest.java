package org.tunica.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.fhir.HookFeedback;
import tools.jackson.databind.JsonNode;

/** The twelve invariants hold for everything that goes out and for the demo calls, and each of them can fail. */
class StandardInvariantsTest {
    @Test
    void hold_forEverythingThatGoesOut() {
        Wire.all().forEach(one -> assertEquals(List.of(), StandardInvariants.ofResponse(one)));
        assertEquals(
                List.of(),
                StandardInvariants.ofResponse(Wire.answer(Wire.excludedOrder()).body()));
        assertEquals(
                List.of(),
                StandardInvariants.ofFeedback(HookFeedback.read("feedback", Wire.file("feedback.json"))
                        .toJson()));
    }

    @Test
    void hold_forTheDemoCalls() {
        Stream.concat(Wire.CALLS.stream(), Stream.of("patient-view-without-scan"))
                .forEach(name -> assertEquals(List.of(), StandardInvariants.ofRequest(Wire.call(name))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cds-r-1|request|{'fhirAuthorization':{}}",
                "cds-r-2|request|{'fhirServer':'x','fhirAuthorization':{'scope':'patient/*.read'}}",
                "cds-resp-1|response|{'cards':[{'selectionBehavior':'at-most-one','suggestions':[{'isRecommended':true},{'isRecommended':true}]}]}",
                "cds-resp-2|response|{'cards':[{'selectionBehavior':'any','suggestions':[{'actions':[{'type':'delete','description':'x','resource':{}}]}]}]}",
                "cds-resp-3|response|{'cards':[{'links':[{'type':'absolute','appContext':'x'}]}]}",
                "cds-resp-4|response|{'cards':[{'overrideReasons':[{'code':'x'}]}]}",
                "cds-resp-5|response|{'cards':[{'selectionBehavior':'any','suggestions':[{'actions':[{'type':'create'}]}]}]}",
                "cds-resp-6|response|{'cards':[{'suggestions':[]}]}",
                "cds-resp-7|response|{'cards':[{'selectionBehavior':'any','suggestions':[{'actionSelectionBehavior':'some'}]}]}",
                "cds-fb-1|feedback|{'feedback':[{'outcome':'ignored'}]}",
                "cds-fb-2|feedback|{'feedback':[{'outcome':'accepted'}]}",
                "cds-fb-3|feedback|{'feedback':[{'outcome':'overridden','overrideReason':{}}]}"
            })
    void eachOfThem_canFail(String invariant, String kind, String json) {
        JsonNode document = Wire.read(json.replace('\'', '"'));
        List<String> broken = switch (kind) {
            case "request" -> StandardInvariants.ofRequest(document);
            case "response" -> StandardInvariants.ofResponse(document);
            default -> StandardInvariants.ofFeedback(document);
        };
        assertEquals(List.of(invariant), broken);
    }
}
