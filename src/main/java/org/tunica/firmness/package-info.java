/**
 * How firm a ranking is, and what would change it: stochastic multicriteria acceptability analysis (SMAA-2: Lahdelma and
 * Salminen, Oper Res 2001;49:444-454) over the errors of measurements, the draws of models, the width of published rates
 * and every opinion on what matters more.
 *
 * <p>In: a case with its advice. Out: the same advice with {@code firstPlaceShare} and {@code firmness} filled in. Entry
 * type: {@link org.tunica.firmness.FirmAdviser}. May import {@code casefile}, {@code knowledge}, {@code heat},
 * {@code physics}, {@code rules}, {@code plan}. Same case, release and seed give the same bytes.
 */
@NullMarked
package org.tunica.firmness;

import org.jspecify.annotations.NullMarked;
