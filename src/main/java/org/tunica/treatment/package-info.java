/**
 * What was delivered and how it went: the record of a delivered session and its procedure note, and the definitions of
 * trials and guidelines, such as energies, cycles and aliquots delivered, whether a vein counts as closed, classes of
 * clot, clinical severity.
 *
 * <p>In: a plan and what was done or seen. Out: a note, a course, numbers, classes and answers, each with its source beside
 * it; nothing here advises. Doors: {@link org.tunica.treatment.DeliveredSession#read}, {@link
 * org.tunica.treatment.NoteWriter}, {@link org.tunica.treatment.FollowUp#read}, {@link org.tunica.treatment.Treatment}.
 * Thresholds are quantities of {@code knowledge/limits/delivered.yaml}, {@code knowledge/limits/follow-up.yaml} and {@code
 * knowledge/follow-up.yaml}; sentences those of {@code knowledge/after-care.yaml}. May import {@code casefile}, {@code
 * knowledge}, {@code heat}, {@code physics}, {@code plan}, {@code session}, {@code paper}.
 *
 * <p>Decisions. A plan carries its case, so a note needs nothing else. A note records what happened: an overdose is told, never
 * refused.
 */
@NullMarked
package org.tunica.treatment;

import org.jspecify.annotations.NullMarked;
