/**
 * How firm a ranking is, and what would change it: stochastic multicriteria acceptability analysis (SMAA-2: Lahdelma and
 * Salminen, Oper Res 2001;49:444-454) over the errors of measurements, the draws of models, the width of published rates
 * and every opinion on what matters more.
 *
 * <p>The cost class is an ordinal criterion (SMAA-O: Lahdelma, Miettinen and Salminen, Eur J Oper Res 2003;147:117-127): low
 * is worth one, high nothing, middling a random value between, anew in each draw and the same for all options. The classes
 * are those of the site, not ranks among the options at hand, so a better class of one option moves no other. Where no class
 * is given, the worst is taken, as for every other criterion: a draw over all classes would let an option gain by having its
 * high class left out. For the same reason cost is weighed as soon as it tells two options apart, even if just one class is
 * given: were two needed, leaving out the high class of one of two would spare it the comparison. The weight of cost is
 * taken from the others in proportion ({@link org.tunica.firmness.LaterWeight}), and it draws chance of its own. So where
 * cost tells nothing apart, or no site gives it, everything is as if it were no criterion, byte for byte.
 *
 * <p>Firmness judges anew and does not search settings anew, unless asked ({@code WholeEngine}); every change says which. 64 draws
 * of the measurements are judged, over them 10,000 of weights and rates; standing goes first in every draw.
 *
 * <p>In: a case with its advice. Out: the same advice with {@code firstPlaceShare} and {@code firmness} filled in. Entry
 * type: {@link org.tunica.firmness.FirmAdviser}. May import {@code casefile}, {@code knowledge}, {@code heat},
 * {@code physics}, {@code rules}, {@code plan}. Same case, release and seed give the same bytes.
 */
@NullMarked
package org.tunica.firmness;

import org.jspecify.annotations.NullMarked;
