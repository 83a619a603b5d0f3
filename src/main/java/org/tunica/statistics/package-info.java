/**
 * The statistics of outcomes: how sure a share is, how long a vein stays closed, whether two groups differ, whether results
 * get worse or better case by case, which groups or periods lie outside what chance explains.
 *
 * <p>In: plain counts, days after treatment, predicted chances. Out: records. Entry types: {@link
 * org.tunica.statistics.WilsonInterval}, {@link org.tunica.statistics.KaplanMeier}, {@link
 * org.tunica.statistics.LogRank}, {@link org.tunica.statistics.OutcomeCusum}, {@link org.tunica.statistics.CusumLimit},
 * {@link org.tunica.statistics.Funnel}. Imports nothing of ours. Knows nothing of privacy: who calls hands in only groups
 * that may be shown.
 */
@NullMarked
package org.tunica.statistics;

import org.jspecify.annotations.NullMarked;
