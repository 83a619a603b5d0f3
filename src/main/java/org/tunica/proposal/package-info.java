/**
 * A proposed change of rules and knowledge: a working copy of what is in force, what differs in it, and whether it may be
 * handed in.
 *
 * <p>In: a folder an author works in, the texts it began with, a day. Out: a {@link org.tunica.proposal.CheckedChange}, one
 * document with a digest that tells what changes in English, every check with its result, and the change line by line.
 *
 * <p>Entry types: {@link org.tunica.proposal.WorkingCopy}, {@link org.tunica.proposal.ChangeChecks}.
 *
 * <p>Decisions. The copy keeps what it began with beside it (<em>before</em>), so that it can be read and checked with
 * nothing else at hand; the digest of that part is noted, so that it cannot be changed unseen. A change brings exactly one
 * change record; earlier records stay as they are. A rule or limit that is taken out is listed under <em>retires</em> of
 * that record, and its id is never used again. A check passes, warns or bars; warnings are for those who sign, a bar ends
 * the matter until it is mended. The document holds no clock time and no name of a machine: the same copy on the same day
 * gives the same bytes, so two people can tell that they saw the same.
 *
 * <p>Scenarios are looked for here, not run; what the rules say at each of their boundaries is run. May import {@code casefile},
 * {@code knowledge}, {@code rules}, {@code review}, {@code signing} (the canonical form of JSON).
 */
@NullMarked
package org.tunica.proposal;

import org.jspecify.annotations.NullMarked;
