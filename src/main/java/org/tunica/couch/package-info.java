/**
 * The specialist's pages: the cases that are kept, a case as a form, the advice for it; then the energy window of a segment,
 * the plan of sessions, the record of what was delivered, and visits after it.
 *
 * <p>In: what was typed, and the store. Out: pages, versions of cases, what was chosen, and documents of cases. Entry type:
 * {@link org.tunica.couch.CouchConfiguration}, which {@code web} takes in. May import the front door and its records, the
 * store, {@code pages} and {@code frame}.
 *
 * <p>Decisions on entering and choosing. The form is read off the records of the contract ({@link org.tunica.couch.CaseAsks}), so
 * a new measurement has its field; a field bears the JSON path of its value, which is where the one reader of cases puts its
 * faults. What is typed goes to that reader as it was typed. A list says by a mark of its own that it is known. Who saves on an
 * older version is shown what changed and loses nothing. No file is uploaded: a script reads it into the text. A choice is kept
 * with the case, as a document with its reason, and as a report of a card, so that one watch sees it beside the feedback of
 * record systems; an option that is not ranked cannot be chosen here. An advice is computed behind the page, which shows
 * what holds so far and looks again.
 *
 * <p>Decisions on treating:
 *
 * <ul>
 *   <li>Every setting shown on an energy window is a run of the heat model itself (a millisecond, some twenty for a leaning
 *       tip); the map around it takes seconds, is computed once and remembered, and nothing is ever read off it.
 *   <li>A record of delivery starts from what the plan intends, and none of it counts before a person confirmed it, segment by
 *       segment. Of a segment that was not done, what still stands as intended is left out.
 *   <li>A visit is added to the follow-up kept last, which is kept anew as a whole; a visit of the same day takes its place.
 * </ul>
 */
@NullMarked
package org.tunica.couch;

import org.jspecify.annotations.NullMarked;
