package org.tunica.store;

import java.time.Instant;

/**
 * What a record system reported of a card.
 *
 * @param service the service that gave the card
 * @param card its id
 * @param outcome the word reported
 * @param outcomeAt when it came to that, as reported
 * @param body the report as it came
 */
public record HookFeedback(String service, String card, String outcome, Instant outcomeAt, String body) {}
