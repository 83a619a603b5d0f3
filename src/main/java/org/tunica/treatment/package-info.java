/**
 * What was delivered and how it went: the record of a delivered session and its procedure note, and the definitions of
 * trials and guidelines, such as energies, cycles and aliquots delivered, whether a vein counts as closed, classes of
 * clot, clinical severity.
 *
 * <p>In: a plan and what was done or seen. Out: a note, numbers, classes and answers, each with its source beside it; nothing
 * here advises. Doors: {@link org.tunica.treatment.DeliveredSession#read}, {@link org.tunica.treatment.NoteWriter}, and for
 * how it went {@link org.tunica.treatment.Treatment}, of a plan, records of delivery and a {@link
 * org.tunica.treatment.FollowUp}. Thresholds are quantities of {@code knowledge/limits/delivered.yaml}, {@code
 * limits/follow-up.yaml} and {@code follow-up.yaml}, sentences those of {@code after-care.yaml}. May import {@code casefile},
 * {@code knowledge}, {@code heat}, {@code physics}, {@code plan}, {@code session}, {@code paper}.
 */
@NullMarked
package org.tunica.treatment;

import org.jspecify.annotations.NullMarked;
