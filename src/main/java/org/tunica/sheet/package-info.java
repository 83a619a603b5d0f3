/**
 * A sheet for patients: what can be done about the veins of a leg, in plain words, with what studies found as natural
 * frequencies. It recommends nothing beyond what a specialist has chosen.
 *
 * <p>In: a case, its advice and the words of {@code knowledge/plain/}. Out: a {@link org.tunica.paper.Document}, see {@link
 * org.tunica.sheet.PatientSheet}. May import {@code casefile}, {@code knowledge}, {@code plan}, {@code paper}.
 */
@NullMarked
package org.tunica.sheet;

import org.jspecify.annotations.NullMarked;
