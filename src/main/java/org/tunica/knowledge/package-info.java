/**
 * Loads and checks everything under {@code knowledge/} and the change records under {@code rules/changes/}.
 *
 * <p>In: a {@link org.tunica.knowledge.Bundle}, the texts of one release. Out: an immutable {@link
 * org.tunica.knowledge.Knowledge}: sources, quantities (limits and constants) with unit, source and standing,
 * techniques, the vocabulary of rules, plausible ranges of measurements; or one {@link
 * org.tunica.casefile.FaultyInput} that lists every fault with file and key. Entry type: {@link
 * org.tunica.knowledge.Knowledge}. May import {@code casefile}. Home of YAML reading.
 */
@NullMarked
package org.tunica.knowledge;

import org.jspecify.annotations.NullMarked;
