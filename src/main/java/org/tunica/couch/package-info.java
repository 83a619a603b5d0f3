/**
 * The specialist's pages: the cases that are kept, a case as a form, and the advice for it.
 *
 * <p>In: what was typed, and the store. Out: pages, versions of cases, and what was chosen. Entry type:
 * {@link org.tunica.couch.CouchConfiguration}, which {@code web} takes in. May import the front door and its records, the
 * store, {@code pages} and {@code frame}.
 */
@NullMarked
package org.tunica.couch;

import org.jspecify.annotations.NullMarked;
