/**
 * What must have happened before rules speak: the life of a release, who signed it, and which release is in force.
 *
 * <p>In: the texts of a release, what was recorded of it step by step, its signatures and the public keys that are trusted;
 * the time comes from the caller. Out: a {@link org.tunica.governance.VerifiedRelease}, the only way to an engine that
 * does not call itself a draft, or the reasons why not.
 *
 * <p>Entry types: {@link org.tunica.governance.ReleaseBuilder} makes a release, {@link org.tunica.governance.SignOff} tells
 * who may sign and what is missing, {@link org.tunica.governance.ReleaseCheck} verifies, {@link
 * org.tunica.governance.Timeline} tells what was in force when.
 *
 * <p>Decisions. The words are those of the open standard for clinical artefacts (draft, active, retired; approved on, last
 * reviewed, effective from and to); <em>in review</em> and <em>approved</em> stand between, <em>refused</em> and
 * <em>withdrawn</em> end a release that never was active. No state is ever stored: it is what the recorded steps say at a
 * moment, so a step is there or is not and there is no half of one. A release that a later one superseded stays active but
 * is not in force; so going back to it needs no step backwards, and the one that was rolled back is retired for good. An
 * activation for later is a step with a later moment; nobody need be awake when it comes. What is signed is the manifest, which
 * names every other file by its digest. The order of people: the author builds, somebody else acknowledges the replay, then
 * a clinical lead and a safety officer sign, none of them the author, no key in two hands.
 *
 * <p>May import {@code casefile}, {@code knowledge}, {@code signing}.
 */
@NullMarked
package org.tunica.governance;

import org.jspecify.annotations.NullMarked;
