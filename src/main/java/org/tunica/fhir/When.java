package org.tunica.fhir;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.YearMonth;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A point in time as a record writes it: a year, a month, a day or an instant. What is not said leaves a span open.
 *
 * @param written as it stands in the record
 * @param instant where it is that exact
 * @param from the first day it may mean, by the calendar of the place where it was written
 * @param to the last day
 */
record When(String written, Optional<Instant> instant, LocalDate from, LocalDate to) {
    private static final Pattern YEAR = Pattern.compile("\\d{4}");
    private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d{2}");
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

    /** The time a text names; nothing when it is not written as the record standard writes one. */
    static Optional<When> of(String text) {
        try {
            if (YEAR.matcher(text).matches()) {
                return span(
                        text,
                        Year.parse(text).atDay(1),
                        Year.parse(text).atMonth(12).atEndOfMonth());
            }
            if (MONTH.matcher(text).matches()) {
                YearMonth month = YearMonth.parse(text);
                return span(text, month.atDay(1), month.atEndOfMonth());
            }
            if (DAY.matcher(text).matches()) {
                return span(text, LocalDate.parse(text), LocalDate.parse(text));
            }
            OffsetDateTime exact = OffsetDateTime.parse(text);
            return Optional.of(
                    new When(text, Optional.of(exact.toInstant()), exact.toLocalDate(), exact.toLocalDate()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<When> span(String text, LocalDate from, LocalDate to) {
        return Optional.of(new When(text, Optional.empty(), from, to));
    }

    /** Whether this is later, whatever both leave open. */
    boolean after(When other) {
        if (instant.isPresent() && other.instant.isPresent()) {
            return instant.get().isAfter(other.instant.get());
        }
        return from.isAfter(other.to);
    }
}
