/**
 * Rules in use, watched: how often each speaks and whether that changed, how often what it says is set aside and why, which
 * reviews fall due, which numbers nobody checked.
 *
 * <p>In: what earlier advices said (rules alone, by case), what people did with cards, the rules and knowledge in force, a
 * day. Out: a {@link org.tunica.watching.WatchReport}. Entry type: {@link org.tunica.watching.Watch}.
 *
 * <p>Decisions. A case counts once in a stretch of time, by its last advice; a rule speaks of a case when it speaks of any of its
 * options, for certain or in doubt. Two shares are compared exactly, all rules at once and look after look under one chance
 * of a false alarm in a year; a difference too small to matter is never told, however sure. The numbers by which this goes
 * stand in {@code knowledge/limits/governance.yaml}. How often something was set aside is no measure of a defect by itself:
 * people may be right to do so, which is why what was found later stands beside it. Nothing here changes a rule or an advice.
 *
 * <p>May import {@code casefile}, {@code knowledge}, {@code rules}, {@code statistics}, {@code signing} (the canonical form of
 * JSON).
 */
@NullMarked
package org.tunica.watching;

import org.jspecify.annotations.NullMarked;
