/**
 * The past cases of a store, from the day a finished case loses its person to the day one is taken out again: offered, made
 * coarser, looked at, released, brought in from elsewhere, withdrawn, and read by whoever searches, audits or replays them.
 *
 * <p>In: a store, the rules in force, a finished case. Out: rows of the store's shelf, or past cases. Entry type: {@link
 * org.tunica.archive.PastCaseDesk}; {@link org.tunica.archive.ReleasedCases} hands them over to be indexed, {@link
 * org.tunica.archive.StoredCases} as lines to be replayed.
 *
 * <p>Decisions. Only the anonymiser makes what waits, and only giving back the digest of what waits releases it: who gives it
 * back has seen exactly those bytes. Cases released together count together towards k, in one transaction. Nothing kept here
 * leads back to the case it came from, so whether a case was offered before is found by what it says, and only as long as
 * nobody made it coarser. The trail of a store tells who offered what and when, and who opened which case: whoever may read
 * all of it may guess whose a past case is, so the trail is for the administrator and the safety officer alone, and neither
 * sees past cases that wait.
 *
 * <p>May import the front door, {@code casefile}, {@code pastcases}, {@code replay}, {@code similar}, {@code
 * treatment}, {@code store}.
 */
@NullMarked
package org.tunica.archive;

import org.jspecify.annotations.NullMarked;
