/**
 * The releases of a place: built, acknowledged, signed, put in force, rolled back, and run as on any day.
 *
 * <p>In: a store, a clock, acts of people. Out: rows of the store, and an engine that runs exactly what is in force. What is
 * allowed is decided in {@code governance}; here it is looked up and written, each act in one transaction with its row of the
 * audit trail, so that a power cut at any moment leaves what was in force in force.
 *
 * <p>Entry types: {@link org.tunica.releases.ReleaseDesk} for acts, {@link org.tunica.releases.KeyDesk} for people and keys,
 * {@link org.tunica.releases.ReleaseRecords} to look, {@link org.tunica.releases.Engines} to run, {@link
 * org.tunica.releases.Shadow} to run the next release silently beside.
 *
 * <p>Decisions. As what a key may sign is written down with the key when it is added, so a person who leaves or changes post
 * takes no signature away; at the moment of signing the person must have that post too. Without a release in force the
 * program's own rules run and every output says DRAFT; a release in force that no longer verifies, or has run out, is never
 * passed over in silence but refused with its reasons. An answer of an earlier day is judged by the keys as they counted
 * that day.
 */
@NullMarked
package org.tunica.releases;

import org.jspecify.annotations.NullMarked;
