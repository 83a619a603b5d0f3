/**
 * Finished cases made anonymous: what was scanned, what was done and how it went, without the person.
 *
 * <p>In goes a case with its records of delivery and its follow-up; out comes a
 * {@link org.tunica.pastcases.PastCase}, {@code tunica-past/1}, one JSON object on one line of a case base. Nothing that names a
 * person, a place, a day or a device's number may stand in it: a past case is made by the anonymiser, or read back by
 * {@link org.tunica.pastcases.PastCaseReader}, which refuses what the anonymiser would not have let through.
 *
 * <p>Decisions. A past case keeps the shape of case, delivery and follow-up, so what reads those reads it; how it leads back to a
 * person is never written. Release gives back the digest of a line, which is shown only with the whole line; cases released
 * together count together; invented cases hide no real one. A base is rewritten beside itself and renamed.
 */
@NullMarked
package org.tunica.pastcases;

import org.jspecify.annotations.NullMarked;
