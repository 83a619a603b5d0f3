/**
 * Two releases held against each other, case by case: what would be advised otherwise, why, and how grave that is.
 *
 * <p>{@link org.tunica.replay.Comparer} tells what differs between two advices of one case. What is compared: which
 * technique leads, how each option stands, the settings, and what the rules say. What is not: points that change no
 * order, near misses, and how firm a ranking is; the draws of firmness change none of the three.
 *
 * <p>The worst comes first, see {@link org.tunica.replay.Gravity}: first a technique that now leads and that the release
 * before bars, then one it holds back, then bars that are lost, before bars that are new.
 */
@NullMarked
package org.tunica.replay;

import org.jspecify.annotations.NullMarked;
