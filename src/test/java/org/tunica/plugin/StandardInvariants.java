package org.tunica.plugin;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** The twelve invariants of the published model of CDS Hooks (cds-r, cds-resp, cds-fb), each as what it breaks. */
final class StandardInvariants {
    private StandardInvariants() {}

    /** What a call breaks: cds-r-1 and cds-r-2. */
    static List<String> ofRequest(JsonNode request) {
        List<String> broken = new ArrayList<>();
        JsonNode authorization = request.path("fhirAuthorization");
        unless(broken, "cds-r-1", authorization.isMissingNode() || request.has("fhirServer"));
        boolean ofPatient = authorization.path("scope").asString("").contains("patient/");
        unless(broken, "cds-r-2", !ofPatient || authorization.has("patient"));
        return broken;
    }

    /** What an answer breaks: cds-resp-1 to cds-resp-7. */
    static List<String> ofResponse(JsonNode response) {
        List<String> broken = new ArrayList<>();
        for (JsonNode card : response.path("cards")) {
            long recommended = card.path("suggestions")
                    .valueStream()
                    .filter(one -> one.path("isRecommended").asBoolean(false))
                    .count();
            boolean atMostOne = card.path("selectionBehavior").asString("").equals("at-most-one");
            unless(broken, "cds-resp-1", !atMostOne || recommended <= 1);
            card.path("links")
                    .forEach(link -> unless(
                            broken,
                            "cds-resp-3",
                            link.path("type").asString("").equals("smart") || !link.has("appContext")));
            card.path("overrideReasons").forEach(reason -> unless(broken, "cds-resp-4", reason.has("display")));
            unless(broken, "cds-resp-6", !card.has("suggestions") || card.has("selectionBehavior"));
            card.path("suggestions").forEach(one -> suggestion(broken, one));
        }
        return broken;
    }

    private static void suggestion(List<String> broken, JsonNode suggestion) {
        for (JsonNode action : suggestion.path("actions")) {
            boolean deletes = action.path("type").asString("").equals("delete");
            unless(broken, "cds-resp-2", !deletes || (action.has("resourceId") && !action.has("resource")));
            unless(broken, "cds-resp-5", action.has("description"));
        }
        String behaviour = suggestion.path("actionSelectionBehavior").asString("");
        unless(broken, "cds-resp-7", Set.of("", "all", "any", "at-most-one").contains(behaviour));
    }

    /** What feedback breaks: cds-fb-1 to cds-fb-3. */
    static List<String> ofFeedback(JsonNode feedback) {
        List<String> broken = new ArrayList<>();
        for (JsonNode entry : feedback.path("feedback")) {
            String outcome = entry.path("outcome").asString("");
            unless(broken, "cds-fb-1", Set.of("accepted", "overridden").contains(outcome));
            unless(broken, "cds-fb-2", !outcome.equals("accepted") || entry.has("acceptedSuggestions"));
            JsonNode reason = entry.path("overrideReason");
            unless(broken, "cds-fb-3", reason.isMissingNode() || reason.has("reason") || reason.has("userComment"));
        }
        return broken;
    }

    private static void unless(List<String> broken, String invariant, boolean holds) {
        if (!holds) {
            broken.add(invariant);
        }
    }
}
