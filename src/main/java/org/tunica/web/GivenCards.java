package org.tunica.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tunica.fhir.HookService;
import org.tunica.store.GivenCard;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What cards given lately rested on, in memory alone: a call stores nothing. Should a person answer a card, what it rested on is
 * kept with the answer, so that what people do with cards can be told of each rule. The oldest are forgotten first.
 */
final class GivenCards {
    private static final int MOST = 10_000;
    private static final String TRACE = "org.tunica.trace";

    private final Map<String, GivenCard> lately = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, GivenCard> eldest) {
            return size() > MOST;
        }
    };

    /** Remembers the cards of an answer. */
    void remember(ObjectNode answer) {
        answer.path("cards").forEach(card -> remember(given(card)));
    }

    private synchronized void remember(GivenCard card) {
        lately.put(card.card(), card);
    }

    /** What a card rested on; empty when it was given too long ago, or by another server. */
    synchronized Optional<GivenCard> of(String card) {
        return Optional.ofNullable(lately.get(card));
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
