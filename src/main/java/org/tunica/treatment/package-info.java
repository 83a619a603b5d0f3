/**
 * What was delivered and how it went, in the definitions of trials and guidelines: energies, cycles and aliquots
 * delivered, whether a vein counts as closed, classes of clot, clinical severity.
 *
 * <p>In: what was done or seen. Out: numbers, classes and answers, each with its source beside it. Pure definitions so far:
 * nothing here advises. Thresholds are quantities of {@code knowledge/limits/follow-up.yaml}, see {@link
 * org.tunica.treatment.FollowUpLimits}. May import {@code casefile}, {@code knowledge}, {@code plan}.
 */
@NullMarked
package org.tunica.treatment;

import org.jspecify.annotations.NullMarked;
