/**
 * What every page for people shares: its frame, how it is written, and what is said when something cannot be done.
 *
 * <p>In: a page record, which knows no layout, and the name of its template in {@code src/main/jte}. Out: HTML. Entry type:
 * {@link org.tunica.frame.Pages}. A controller marked {@link org.tunica.frame.ForPeople} is answered for by pages when it
 * refuses, never by a problem for programs. A kept case is opened through {@link org.tunica.frame.OpenCases}, so that each look
 * at one leaves its row in the audit trail. May import the front door, casefile, plan and store.
 *
 * <p>Packages of pages stand on this one and are put together by {@code web}; the templates become classes there, so the page
 * records they show are public.
 */
@NullMarked
package org.tunica.frame;

import org.jspecify.annotations.NullMarked;
