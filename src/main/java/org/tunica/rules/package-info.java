/**
 * Rule sentences: parsed into an immutable rule tree, run stage by stage in Drools, answered with verdicts.
 *
 * <p>In: the texts under {@code rules/} and the facts of the options of a segment. Out: {@link
 * org.tunica.rules.Verdict}s, each with its rule, in a total order; or one {@link org.tunica.casefile.FaultyInput} that
 * lists every wrong sentence with file, line and the closest form. Entry type: {@link org.tunica.rules.RuleBook}. May
 * import {@code casefile}, {@code knowledge}, {@code heat}, {@code physics}. Home of Drools; rule text never becomes source code.
 * Scenarios: {@code features/1-findings} to {@code features/5-settings}.
 *
 * <p>Conditions are three-valued. A rule whose conditions all hold speaks; one where none fails but some cannot be told
 * is in doubt, which the planner reads against the option. Near misses ask the engine: a number within {@code near.share} of a
 * limit is moved just over it and judged again; nothing else reasons about what would turn, and computed numbers stay.
 */
@NullMarked
package org.tunica.rules;

import org.jspecify.annotations.NullMarked;
