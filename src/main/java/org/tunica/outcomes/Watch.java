package org.tunica.outcomes;

import java.util.List;
import org.tunica.statistics.CusumLimit;
import org.tunica.statistics.CusumSide;
import org.tunica.statistics.OutcomeCusum;

/**
 * Results of one technique watched case by case against published rates.
 *
 * @param failed segments not closed at one year, of those on the chart
 * @param predictedFailures how many published rates led to expect, a number of segments
 * @param rates ids of the rates
 * @param sources ids of their sources
 * @param chart the chart
 * @param worse how its limit for worse results was found
 * @param better likewise for better ones
 * @param signals when it spoke
 */
public record Watch(
        int failed,
        double predictedFailures,
        List<String> rates,
        List<String> sources,
        OutcomeCusum chart,
        CusumLimit worse,
        CusumLimit better,
        List<Signal> signals) {
    public Watch {
        rates = List.copyOf(rates);
        sources = List.copyOf(sources);
        signals = List.copyOf(signals);
    }

    /**
     * One signal, with the year in which the case was treated.
     *
     * @param sinceCaseNumber the likeliest beginning of the change
     */
    public record Signal(CusumSide side, int caseNumber, int year, int sinceCaseNumber, int sinceYear) {}
}
