/**
 * The pages of the governance team: rules with their numbers, sources and use; changes on their way; replays; releases, who
 * signed them, what is in force; and what people later find of cards that were set aside.
 *
 * <p>In: the store, and what was typed. Out: pages, and acts of {@code releases} and {@code workroom}; nothing is decided
 * here. Entry type: {@link org.tunica.office.OfficeConfiguration}, which {@code web} takes in.
 *
 * <p>Decisions. No private key ever comes here: the page says exactly what is to be signed and with which command, and takes
 * the signature. What changes what is in force is confirmed on a page that tells what will be otherwise, and asks who and why.
 * An author starts, edits, replays, hands in, builds and submits; the clinical lead puts in force, plans and retires; the
 * clinical lead or the safety officer refuses and rolls back, for either must be able to stop what does harm. A form that is
 * refused comes back with all that was typed.
 *
 * <p>May import the front door, {@code casefile}, {@code knowledge}, {@code plan}, {@code rules}, {@code review}, {@code proposal}, {@code
 * replay}, {@code watching}, {@code statistics}, {@code governance}, {@code signing}, {@code releases}, {@code workroom},
 * {@code store}, {@code frame}.
 */
@NullMarked
package org.tunica.office;

import org.jspecify.annotations.NullMarked;
