package org.tunica.governance;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that was recorded of a release.
 *
 * @param order of recording, over all releases
 * @param at when it was recorded
 * @param from when it takes effect; later than {@code at} for an activation that was planned
 * @param by who
 * @param reason in words of the person; may be empty
 * @param reviewBy day of the next review, where a review says so
 */
public record Step(
        long order, StepKind kind, Instant at, Instant from, String by, String reason, Optional<LocalDate> reviewBy) {}
