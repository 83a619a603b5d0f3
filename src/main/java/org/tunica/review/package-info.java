/**
 * What a reviewer of the rules gets from the rule tree: remarks, boundary probes, differences between two releases, the
 * rule book, the grammar and the hazard log.
 *
 * <p>In: a bundle with its knowledge and rules. Out: small records, and pages as Markdown and as one self-contained HTML
 * file each. Nothing here is written by hand twice: every word comes from the tree the engine runs. Entry type: {@link
 * org.tunica.review.RuleReview}. May import {@code casefile}, {@code knowledge}, {@code physics}, {@code rules}. Home of
 * Markdown.
 *
 * <p>Decision. Reasoning over cells, not interval formulas: fields are cut at every limit and the engine's own predicates are asked
 * once per cell, so edges and "unknown" cannot drift from the engine.
 */
@NullMarked
package org.tunica.review;

import org.jspecify.annotations.NullMarked;
