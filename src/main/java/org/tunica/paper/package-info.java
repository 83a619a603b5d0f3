/**
 * A document for people on paper: as self-contained XHTML and as PDF, in one plain look, with the reference, the mark
 * (such as DRAFT), the cautions and "page x of y" on every page.
 *
 * <p>In: a {@link org.tunica.paper.Document}, pure data made of sections of blocks; texts are texts and never markup. Out:
 * {@link org.tunica.paper.Paper#xhtml} and {@link org.tunica.paper.Paper#pdf}; the same document gives the same bytes.
 * Whoever prints it as plain text walks the same blocks. Home of the PDF library and of its fonts (DejaVu Sans Condensed,
 * licence beside the files). Imports nothing of ours.
 */
@NullMarked
package org.tunica.paper;

import org.jspecify.annotations.NullMarked;
