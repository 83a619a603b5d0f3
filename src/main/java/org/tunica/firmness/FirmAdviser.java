package org.tunica.firmness;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Knowledge;
import org.tunica.physics.Derived;
import org.tunica.physics.Physics;
import org.tunica.plan.Advice;
import org.tunica.plan.Planner;
import org.tunica.plan.RankingFirmness;
import org.tunica.plan.Rated;
import org.tunica.plan.SegmentAdvice;
import org.tunica.rules.RuleBook;

/**
 * Tells how firm the ranking of an advice is.
 *
 * <p>Two rounds of chance. In the first, {@link #JUDGED_DRAWS} times, the measurements are off by their errors and the whole
 * segment is judged anew, at the heat settings chosen for what was measured: standings and points follow. In the second,
 * {@link #DRAWS} times over the first in turn, the warmth of nerve and skin, the published rates and the weights are drawn.
 * In every draw the standing goes first, as in the ranking; only among options of the best standing do the weights decide.
 * So no weight lifts a technique over a caution, and never over an exclusion.
 */
public final class FirmAdviser {
    /** 95 of 100 times a share is then right to a hundredth: 1.96 * sqrt(0.25 / 10000) = 0.0098. */
    static final int DRAWS = 10_000;

    /** As many as the heat model draws. */
    static final int JUDGED_DRAWS = 64;

    private final Physics physics;
    private final RuleBook rules;
    private final Planner planner;
    private final Weighing weighing;
    private final MeasurementDraws measurementDraws;
    private final Turning turning;
    private final WholeEngine wholeEngine;
    private final Missing missing;
    private final HardCase hardCase;
    private final Wishes wishes;
    private final CostWorth cost;

    /** An adviser over the knowledge, models and rules of one release. */
    public FirmAdviser(Knowledge knowledge, Physics physics, RuleBook rules, Planner planner, Minutes minutes) {
        this.physics = physics;
        this.rules = rules;
        this.planner = planner;
        this.weighing = new Weighing(knowledge, minutes);
        this.measurementDraws = new MeasurementDraws(knowledge);
        this.turning = new Turning(knowledge);
        this.wholeEngine = new WholeEngine(knowledge, physics, planner, turning);
        this.missing = new Missing(knowledge, rules, planner);
        this.hardCase = new HardCase(planner, rules);
        this.wishes = new Wishes(DRAWS, Physics.SEED);
        this.cost = new CostWorth(DRAWS, Physics.SEED + 2);
    }

    /** Ids of the numbers of knowledge/ that are read here. */
    public static Set<String> ids() {
        Set<String> ids = new TreeSet<>(Weighing.IDS);
        ids.add(RankingFirmness.LIMIT);
        return ids;
    }

    /** The same advice with how firm each ranking is. Segments are looked at side by side and told in their order. */
    public Advice firm(CaseFile caseFile, Advice advice) {
        List<Situation> situations = Situation.of(caseFile);
        List<SegmentAdvice> segments = IntStream.range(0, situations.size())
                .parallel()
                .mapToObj(i -> firm(situations.get(i), advice.segments().get(i), advice.seed()))
                .toList();
        return new Advice(
                advice.format(), advice.caseRef(), advice.release(), advice.seed(), advice.caution(), segments);
    }

    /**
     * The same advice, with every measurement that has a part in heat settings looked at once more by the whole engine. It
     * seeks the settings of all devices for walls and gaps nobody measured, which may take a minute a segment.
     *
     * @param firm an advice of {@link #firm}
     */
    public Advice confirmed(CaseFile caseFile, Advice firm) {
        List<Situation> situations = Situation.of(caseFile);
        List<SegmentAdvice> segments = new ArrayList<>();
        for (int i = 0; i < situations.size(); i++) {
            Situation measured = situations.get(i);
            SegmentAdvice segment = firm.segments().get(i);
            segments.add(segment.firmness()
                    .map(firmness -> segment.with(wholeEngine.confirmed(measured, firmness)))
                    .orElse(segment));
        }
        return new Advice(firm.format(), firm.caseRef(), firm.release(), firm.seed(), firm.caution(), segments);
    }

    private SegmentAdvice firm(Situation measured, SegmentAdvice advice, long seed) {
        Derived chosen = physics.derive(measured.caseFile(), measured.segment());
        Trials trials = new Trials(planner, rules, physics, measured, chosen);
        Trials.Trial now = trials.of(measured);
        List<Trials.Trial> drawn = measurementDraws.of(measured, JUDGED_DRAWS, seed).stream()
                .map(trials::of)
                .toList();
        List<Worths> worths = worths(measured, now, drawn);
        Wishes.Wished wished = wishes.of(measured.caseFile(), CostWorth.weighed(worths));
        FirmnessWriter writer = new FirmnessWriter(advice, worths, wished, cost, seed);
        SegmentAdvice firm = writer.write(turning.of(measured, trials), missing.of(measured, now, trials));
        return firm.withHardCase(hardCase.signs(measured, chosen, firm));
    }

    /** Of every technique that some draw ranks. */
    private List<Worths> worths(Situation measured, Trials.Trial now, List<Trials.Trial> drawn) {
        List<Worths> worths = new ArrayList<>();
        for (int place = 0; place < now.rated().size(); place++) {
            int at = place;
            boolean ranked = ranked(now.rated().get(at))
                    || drawn.stream().anyMatch(trial -> ranked(trial.rated().get(at)));
            if (ranked) {
                worths.add(weighing.of(measured, place, now, drawn));
            }
        }
        return worths;
    }

    private static boolean ranked(Rated rated) {
        return rated.standing().ranked();
    }
}
