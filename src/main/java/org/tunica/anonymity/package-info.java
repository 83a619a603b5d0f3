/**
 * Keeping people from being found: free text reduced by an allow-list, and how many records of a table look alike.
 *
 * <p>In goes a text and a {@link org.tunica.anonymity.Vocabulary}; {@link org.tunica.anonymity.Scrubber} gives back its words of
 * that vocabulary and its measurements, with a placeholder for everything else: what is not known to be harmless goes. In goes
 * a table with one {@link org.tunica.anonymity.Ladder} for each thing an outsider could know;
 * {@link org.tunica.anonymity.Alikeness} counts k and distinct l and looks for the mildest recoding that reaches a k. Nothing
 * here knows of veins.
 *
 * <p>Decision. Scrubbing looks for nothing: it keeps what is listed, again until nothing changes. A common name stands in phrases
 * only, never as a word of its own.
 */
@NullMarked
package org.tunica.anonymity;

import org.jspecify.annotations.NullMarked;
