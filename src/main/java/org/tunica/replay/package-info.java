/**
 * Two releases held against each other, case by case: what would be advised otherwise, why, and how grave that is.
 *
 * <p>{@link org.tunica.replay.Comparer} tells what differs between two advices of one case. What is compared: which
 * technique leads, how each option stands, the settings, and what the rules say. What is not: points that change no
 * order, near misses, and how firm a ranking is; the draws of firmness change none of the three. The worst comes first, see
 * {@link org.tunica.replay.Gravity}: first a technique that now leads and that the release before bars, then one it holds
 * back, then bars that are lost, before bars that are new.
 *
 * <p>{@link org.tunica.replay.Replay} does so for very many cases and adds up to a
 * {@link org.tunica.replay.ReplayResult}, {@code tunica-replay/1}. It is quick because it leaves out what cannot matter, and
 * each of these is exact, not a guess: a segment of which no rule that differs can turn is not judged at all
 * ({@link org.tunica.rules.RuleShift}); of the others only options that may turn are judged under both releases; the rules
 * run in one pass without the engine, which judges one case of each batch again; and what the heat model answered is kept,
 * for an answer rests on wall, gaps, device and constants alone ({@link org.tunica.replay.WorkFolder}). A test holds
 * replays against fresh runs with edits at random.
 *
 * <p>A case the release before cannot read is a fault of the base and ends the replay; one the later release refuses is a
 * finding. Results name past cases by their random ids: they are for those who decide about a release, and stay in the house.
 */
@NullMarked
package org.tunica.replay;

import org.jspecify.annotations.NullMarked;
