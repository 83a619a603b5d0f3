/**
 * What is known about patient, room, limbs and segments, and what is not known.
 *
 * <p>In: the bytes of a case file ({@code "format": "tunica-case/1"}). Out: an immutable {@link
 * org.tunica.casefile.CaseFile}, or one {@link org.tunica.casefile.FaultyInput} that lists every fault with its JSON
 * path. Unknown is an empty {@code Optional}; zero is a measurement. Entry type: {@link org.tunica.casefile.CaseFile}.
 * Imports nothing of ours. Home of JSON reading; trees are built from tokens ({@code TokenTree}), for the library's mapper would
 * cost 140 ms of a start.
 */
@NullMarked
package org.tunica.casefile;

import org.jspecify.annotations.NullMarked;
