/**
 * The meeting of colleagues over hard cases: which cases wait and why, what is shown of them, what was decided.
 *
 * <p>In: kept cases, the signs that the rules of stage 6 find in their advice and those found in past cases, and what people
 * ask. Out: pages, a packet for
 * each case on paper, and decisions that are kept with the case. Entry types: {@link org.tunica.meeting.MeetingBoard} for what
 * is kept and {@link org.tunica.meeting.MeetingConfiguration}, which {@code web} takes in. May import the front door and its
 * records, the store, {@code couch} for what its pages remember, and {@code frame}. Rules in {@code rules/6-meeting}.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li>A packet goes under a random id: neither the reference of the case nor a name of a segment stands in it or in its
 *       address. The advice in it is that of the case as it is, under other names, so rounding cannot change it; what is told
 *       of the person is rounded as for past cases.
 *   <li>A case that is sent, and each date set for it, is a document of the case; the last one counts. So is a decision:
 *       one that is taken back is followed by another and stays.
 *   <li>Governance hears of a decision as it hears of a card: what was first by the rules, and whether it was taken.
 * </ul>
 */
@NullMarked
package org.tunica.meeting;

import org.jspecify.annotations.NullMarked;
