/**
 * Ranks every option of every segment and says why.
 *
 * <p>In: a case, the knowledge and the rules of a release. Out: {@link org.tunica.plan.Advice}, the record behind the
 * JSON contract {@code tunica-advice/1}. Entry type: {@link org.tunica.plan.Planner}. May import {@code casefile},
 * {@code knowledge}, {@code heat}, {@code physics}, {@code rules}. Same case, release and seed give the same advice, byte
 * for byte.
 *
 * <p>Decisions. Cautions are graded: a slight one is counsel, it costs points and is shown, but the option need not be careful
 * for it. Exact ties alone are settled ({@code TieKey}): death of the whole wall, char, nerve, published rate, name; unknown is
 * worst. The rules of the meeting are asked once a ranking stands and change none.
 */
@NullMarked
package org.tunica.plan;

import org.jspecify.annotations.NullMarked;
