package org.tunica.web;

import java.util.Set;
import java.util.TreeSet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tunica.fhir.HookService;
import org.tunica.store.Actor;
import org.tunica.store.GivenCard;
import org.tunica.store.Store;
import org.tunica.store.StoreUnavailable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps what the cards of an answer rested on, so that what people do with them can be told of each rule. A store that cannot
 * be written keeps no card from a patient: the answer goes out and the log says that it was not counted.
 */
final class GivenCards {
    private static final Logger LOG = LoggerFactory.getLogger(GivenCards.class);
    private static final String TRACE = "org.tunica.trace";

    private final Store store;

    GivenCards(Store store) {
        this.store = store;
    }

    void keep(Actor by, ObjectNode answer) {
        if (answer.path("cards").isEmpty()) {
            return;
        }
        try {
            store.together(() -> {
                answer.path("cards").forEach(card -> store.cards().keep(by, given(card)));
                return answer.path("cards").size();
            });
        } catch (StoreUnavailable e) {
            LOG.warn("cards were given and could not be counted");
        }
    }

    private static GivenCard given(JsonNode card) {
        JsonNode trace = card.path("extension").path(TRACE);
        JsonNode about = trace.path("about");
        Set<String> rules = new TreeSet<>();
        about.path("rules").forEach(rule -> rules.add(rule.asString("")));
        return new GivenCard(
                card.path("uuid").asString(""),
                HookService.id(),
                trace.path("release").path("version").asString(""),
                trace.path("release").path("digest").asString(""),
                about.path("technique").asString(""),
                about.path("standing").asString(""),
                rules);
    }
}
