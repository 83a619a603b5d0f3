/**
 * What was delivered and how it went, in the definitions of trials and guidelines: energies, cycles and aliquots
 * delivered, whether a vein counts as closed, classes of clot, clinical severity.
 *
 * <p>In: what was done or seen. Out: numbers, classes and answers, each with its source beside it; nothing here advises. Entry
 * type for how it went: {@link org.tunica.treatment.Treatment}, of a plan, records of delivery and a {@link
 * org.tunica.treatment.FollowUp}. Thresholds are quantities of {@code knowledge/limits/follow-up.yaml} and {@code
 * knowledge/follow-up.yaml}, sentences those of {@code knowledge/after-care.yaml}. May import {@code casefile}, {@code knowledge}, {@code plan}.
 */
@NullMarked
package org.tunica.treatment;

import org.jspecify.annotations.NullMarked;
