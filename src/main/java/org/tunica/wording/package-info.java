/**
 * An advice in sentences, the same for a terminal and for a page: settings, what the models foresee, reasons with rule and
 * source, near misses, how firm a ranking is.
 *
 * <p>In: records of an advice. Out: plain sentences without layout. May import casefile, knowledge, rules and plan.
 */
@NullMarked
package org.tunica.wording;

import org.jspecify.annotations.NullMarked;
