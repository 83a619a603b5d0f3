package org.tunica.firmness;

import java.util.List;
import java.util.SplittableRandom;
import org.tunica.casefile.Criterion;

/**
 * The values of the options of a segment. Standing and points come from the measurements as drawn, in turn; the warmth of
 * nerve and skin from the spread of the heat model, all options by the same chance, since one gap and one tissue is behind
 * them; lasting closure from published rates, techniques with the same rates by the same chance; cost from the class.
 */
final class SegmentDraws implements CriteriaDraws {
    private final List<Worths> options;
    private final List<Criterion> weighed;
    private final CostWorth cost;
    private final int[] rateGroup;
    private final double[] chances;

    /**
     * @param options what each option is worth, all with the same number of judged draws
     * @param weighed criteria in their order, with or without the cost class
     */
    SegmentDraws(List<Worths> options, List<Criterion> weighed, CostWorth cost) {
        this.options = List.copyOf(options);
        this.weighed = List.copyOf(weighed);
        this.cost = cost;
        this.rateGroup = new int[options.size()];
        int groups = 0;
        for (int i = 0; i < options.size(); i++) {
            rateGroup[i] = -1;
            for (int k = 0; k < i; k++) {
                if (options.get(k).durability() == options.get(i).durability()) {
                    rateGroup[i] = rateGroup[k];
                }
            }
            rateGroup[i] = rateGroup[i] < 0 ? groups++ : rateGroup[i];
        }
        this.chances = new double[groups];
    }

    @Override
    public int options() {
        return options.size();
    }

    @Override
    public int criteria() {
        return weighed.size();
    }

    @Override
    public void fill(int draw, SplittableRandom random, double[] values, int[] tiers) {
        double nerve = random.nextDouble();
        double skin = random.nextDouble();
        for (int g = 0; g < chances.length; g++) {
            chances[g] = random.nextDouble();
        }
        for (int i = 0; i < tiers.length; i++) {
            Worths option = options.get(i);
            int judged = draw % option.tiers().length;
            int at = i * criteria();
            tiers[i] = option.tiers()[judged];
            values[at] = option.killProbability();
            values[at + 1] = option.nerve().at(nerve);
            values[at + 2] = option.skin().at(skin);
            values[at + 3] = option.durability().at(chances[rateGroup[i]]);
            values[at + 4] = option.shortSessionShare();
            values[at + 5] = option.fewNeedlesShare();
            values[at + 6] = option.rules()[judged];
            if (weighed.contains(Criterion.LOW_COST)) {
                values[at + 7] = cost.at(draw, option.costClass());
            }
        }
    }
}
