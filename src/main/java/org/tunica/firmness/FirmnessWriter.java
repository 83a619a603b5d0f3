package org.tunica.firmness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tunica.casefile.Criterion;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.RankingFirmness;
import org.tunica.plan.SegmentAdvice;

/** Draws the ranks of the options of a segment and writes them into its advice. */
final class FirmnessWriter {
    private static final Comparator<FirmnessAdvice.Share> LARGEST_FIRST =
            Comparator.comparing(FirmnessAdvice.Share::drawShare).reversed().thenComparing(FirmnessAdvice.Share::name);

    private final SegmentAdvice advice;
    private final List<Worths> worths;
    private final Wishes.Wished wished;
    private final double[] usual;
    private final Optional<Acceptability> ranks;

    FirmnessWriter(SegmentAdvice advice, List<Worths> worths, Wishes.Wished wished, CostWorth cost, long seed) {
        this.advice = advice;
        this.worths = worths;
        this.wished = wished;
        this.usual = wished.weights().means();
        this.ranks = worths.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        AcceptabilityRun.of(new SegmentDraws(worths, wished.weighed(), cost), wished.weights(), seed));
    }

    SegmentAdvice write(List<FirmnessAdvice.Change> changes, List<FirmnessAdvice.Missing> missing) {
        List<FirmnessAdvice.Option> options = options();
        Map<String, Double> shares = new TreeMap<>();
        options.forEach(option -> shares.put(option.technique(), option.firstPlaceShare()));
        List<OptionAdvice> told = advice.options().stream()
                .map(option -> option.standing().ranked()
                        ? option.withFirstPlaceShare(shares.get(option.technique()))
                        : option)
                .toList();
        double leading = told.get(0).firstPlaceShare().orElse(0);
        RankingFirmness.State state = state(leading);
        List<FirmnessAdvice.Share> families = families(shares);
        boolean firm = state == RankingFirmness.State.FIRM;
        return advice.with(
                told,
                advice.ranking().found(state, state(share(told.get(0), families))),
                new FirmnessAdvice(
                        firm,
                        says(firm, leading, options),
                        advice.ranking().leastShare(),
                        FirmAdviser.DRAWS,
                        FirmAdviser.JUDGED_DRAWS,
                        wished.order(),
                        wished.says(),
                        families,
                        options,
                        changes,
                        missing));
    }

    private static double share(OptionAdvice first, List<FirmnessAdvice.Share> families) {
        return families.stream()
                .filter(share -> first.standing().ranked()
                        && share.name().equals(first.family().word()))
                .mapToDouble(FirmnessAdvice.Share::drawShare)
                .sum();
    }

    private RankingFirmness.State state(double leading) {
        if (worths.isEmpty()) {
            return RankingFirmness.State.NONE;
        }
        return leading >= advice.ranking().leastShare() && waiting() == 0
                ? RankingFirmness.State.FIRM
                : RankingFirmness.State.NOT_FIRM;
    }

    private String says(boolean firm, double leading, List<FirmnessAdvice.Option> options) {
        if (!advice.options().get(0).standing().ranked()) {
            return options.isEmpty()
                    ? "nothing can be ranked"
                    : "not firm: nothing can be ranked as measured, yet within the errors of the measurements "
                            + name(options.get(0).technique()) + " could lead";
        }
        String held = "first place held in " + Shares.percent(leading) + " of draws" + tie();
        if (firm) {
            return held + ": firm";
        }
        String waiting = waiting() == 0 ? "" : waiting() + " techniques wait to be judged";
        String rivals = leading >= advice.ranking().leastShare() ? "" : rivals(options) + " could lead";
        return held + ": not firm; " + rivals + (rivals.isEmpty() || waiting.isEmpty() ? "" : "; ") + waiting;
    }

    /** Of two that are even on points no rule prefers one; what settled it is told. */
    private String tie() {
        return advice.options().get(0).tie().map(tie -> ", " + tie.says()).orElse("");
    }

    private long waiting() {
        return advice.options().stream()
                .filter(option -> option.standing() == OptionStanding.MEASURE_FIRST)
                .count();
    }

    private String rivals(List<FirmnessAdvice.Option> options) {
        String first = advice.options().get(0).technique();
        return options.stream()
                .filter(option -> !option.technique().equals(first) && option.firstPlaceShare() > 0)
                .limit(2)
                .map(option -> name(option.technique()) + " (" + Shares.percent(option.firstPlaceShare()) + ")")
                .reduce((a, b) -> a + " or " + b)
                .orElse("none else");
    }

    private String name(String technique) {
        return advice.options().stream()
                .filter(option -> option.technique().equals(technique))
                .map(OptionAdvice::says)
                .findFirst()
                .orElseThrow();
    }

    private List<FirmnessAdvice.Share> families(Map<String, Double> shares) {
        Map<String, Double> byFamily = new TreeMap<>();
        advice.options().stream()
                .filter(option -> shares.containsKey(option.technique()))
                .forEach(option -> byFamily.merge(option.family().word(), shares.get(option.technique()), Double::sum));
        return byFamily.entrySet().stream()
                .map(entry -> new FirmnessAdvice.Share(entry.getKey(), Shares.rounded(entry.getValue())))
                .sorted(LARGEST_FIRST)
                .toList();
    }

    private List<FirmnessAdvice.Option> options() {
        return ranks.map(found -> IntStream.range(0, worths.size())
                        .mapToObj(i -> option(found, i))
                        .sorted(Comparator.comparing(FirmnessAdvice.Option::firstPlaceShare)
                                .reversed()
                                .thenComparing(FirmnessAdvice.Option::technique))
                        .toList())
                .orElse(List.of());
    }

    private FirmnessAdvice.Option option(Acceptability found, int i) {
        List<FirmnessAdvice.Weight> central =
                found.centralWeights(i).map(this::weights).orElse(List.of());
        OptionalDouble confidence = found.confidence(i);
        return new FirmnessAdvice.Option(
                worths.get(i).technique(),
                Shares.rounded(found.firstShare(i)),
                Shares.rounded(worths.get(i).rankedShare()),
                IntStream.range(0, worths.size())
                        .mapToObj(rank -> Shares.rounded(found.share(i, rank)))
                        .toList(),
                central,
                CentralWords.of(central, usual),
                confidence.isPresent()
                        ? OptionalDouble.of(Shares.rounded(confidence.getAsDouble()))
                        : OptionalDouble.empty(),
                wins(found, i),
                open(worths.get(i)),
                worths.get(i).rates(),
                costWeighed() ? worths.get(i).costClass() : Optional.empty());
    }

    private boolean costWeighed() {
        return wished.weighed().contains(Criterion.LOW_COST);
    }

    private List<String> open(Worths option) {
        List<String> open = new ArrayList<>(option.open());
        if (costWeighed() && option.costClass().isEmpty()) {
            open.add("the site gives it no cost class: taken as high");
        }
        return open;
    }

    private List<FirmnessAdvice.Weight> weights(double[] central) {
        List<FirmnessAdvice.Weight> weights = new ArrayList<>();
        for (Criterion criterion : wished.weighed()) {
            weights.add(new FirmnessAdvice.Weight(criterion, Shares.rounded(central[criterion.ordinal()])));
        }
        return weights;
    }

    private List<FirmnessAdvice.Share> wins(Acceptability found, int i) {
        return IntStream.range(0, worths.size())
                .filter(k -> k != i)
                .mapToObj(
                        k -> new FirmnessAdvice.Share(worths.get(k).technique(), Shares.rounded(found.winShare(i, k))))
                .toList();
    }
}
