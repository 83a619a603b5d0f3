package org.tunica.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that is to be recorded of a release.
 *
 * @param act what, as the audit trail tells it
 * @param from when it takes effect, to the millisecond
 * @param reviewBy day of the next review, where it says one
 * @param reason in words of a person; may be empty
 */
public record NewStep(String version, Act act, Instant from, Optional<LocalDate> reviewBy, String reason) {}
