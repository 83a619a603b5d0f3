package org.tunica.firmness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.tunica.casefile.Room;
import org.tunica.heat.HeatSpread;
import org.tunica.heat.ProposedSetting;
import org.tunica.heat.WarmedSpread;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.PublishedRate;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Technique;
import org.tunica.physics.HeatOutlook;
import org.tunica.physics.OptionNumbers;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Rated;

/** Turns what is judged and computed of a technique into its worth by each criterion. */
final class Weighing {
    /** The tier of what a draw does not rank; those that are ranked stand before. */
    static final int NOT_RANKED = OptionStanding.CAREFUL.ordinal() + 1;

    private static final String MINUTES = "criterion.short-session.worst";
    private static final String TUMESCENT = "criterion.few-needles.worst";
    private static final String POINTS_WORST = "criterion.rules.worst";
    private static final String POINTS_BEST = "criterion.rules.best";
    private static final String BODY = "tissue.body.temperature";
    private static final String NERVE_RED = "heat.nerve.peak.red";
    private static final String SKIN_RED = "heat.skin.peak.red";

    /** Ids of the numbers of knowledge/ that are read here. */
    static final Set<String> IDS = Set.of(MINUTES, TUMESCENT, POINTS_WORST, POINTS_BEST, BODY, NERVE_RED, SKIN_RED);

    private final Knowledge knowledge;
    private final Minutes minutes;

    /** By technique and vein; techniques with the same rates share one. */
    private final Map<List<PublishedRate>, Quantiles> rates = new HashMap<>();

    Weighing(Knowledge knowledge, Minutes minutes) {
        this.knowledge = knowledge;
        this.minutes = minutes;
        knowledge
                .rates()
                .values()
                .forEach(rate -> rate.techniques()
                        .forEach(technique -> rate.veins()
                                .forEach(vein -> rates.computeIfAbsent(rates(technique, vein), Quantiles::of))));
    }

    private List<PublishedRate> rates(String technique, String vein) {
        return knowledge.rates().values().stream()
                .filter(rate ->
                        rate.techniques().contains(technique) && rate.veins().contains(vein))
                .toList();
    }

    /**
     * The worth of a technique.
     *
     * @param place of the technique in the order of ids
     * @param measured the segment as measured
     * @param trials the segment with the errors drawn
     */
    Worths of(Situation situation, int place, Trials.Trial measured, List<Trials.Trial> trials) {
        Technique technique = knowledge.technique(measured.rated().get(place).technique());
        OptionNumbers numbers = measured.derived().options().get(technique.id());
        List<String> open = new ArrayList<>();
        return new Worths(
                technique.id(),
                trials.stream()
                        .mapToInt(trial -> tier(trial.rated().get(place)))
                        .toArray(),
                trials.stream()
                        .mapToDouble(trial -> points(trial.rated().get(place)))
                        .toArray(),
                kill(technique, numbers, trials, open),
                margin(technique, numbers, HeatSpread::nerve, NERVE_RED, "nerve", open),
                margin(technique, numbers, HeatSpread::skin, SKIN_RED, "skin", open),
                durability(technique, situation.segment().vein().word(), open),
                below(minutes.of(technique, situation.segment(), numbers), MINUTES, "working time", open),
                fewNeedles(technique, numbers, open),
                costClass(situation, technique),
                told(rates(technique.id(), situation.segment().vein().word())),
                open);
    }

    private static Optional<Room.CostClass> costClass(Situation situation, Technique technique) {
        return situation.caseFile().room().costClasses().flatMap(classes -> classes.of(technique.id()));
    }

    private static int tier(Rated rated) {
        return Math.min(NOT_RANKED, rated.standing().ordinal());
    }

    private double points(Rated rated) {
        double worst = knowledge.value(POINTS_WORST);
        return within01((rated.points() - worst) / (knowledge.value(POINTS_BEST) - worst));
    }

    /** Probability that the whole wall dies: of heat by its draws, else over the drawn walls and the depth of kill. */
    private double kill(Technique technique, OptionNumbers numbers, List<Trials.Trial> trials, List<String> open) {
        return switch (technique.family()) {
            case HEAT ->
                spread(numbers)
                        .map(HeatSpread::delayedProbability)
                        .orElseGet(() -> none("whole-wall kill is not computed: taken as none", open));
            case ADHESIVE -> none("an adhesive kills no wall", open);
            case FOAM, MECHANOCHEMICAL, FOCUSED_ULTRASOUND ->
                numbers.wallFractionKilled().isPresent()
                        ? reached(technique, trials)
                        : none("whole-wall kill is not computed: taken as none", open);
        };
    }

    private static double reached(Technique technique, List<Trials.Trial> trials) {
        SplittableRandom random = new SplittableRandom(technique.id().hashCode());
        double reached = 0;
        for (Trials.Trial trial : trials) {
            OptionNumbers numbers = trial.derived().options().get(technique.id());
            reached += reaches(technique, numbers, random.nextDouble()) ? 1 : 0;
        }
        return reached / trials.size();
    }

    private static boolean reaches(Technique technique, OptionNumbers numbers, double chance) {
        if (technique.family() == Family.FOCUSED_ULTRASOUND) {
            return numbers.wallFractionKilled().orElse(0) >= 1;
        }
        Quantity depth = technique.quantity("killDepthMm");
        double low = depth.low().orElse(depth.value());
        double high = depth.high().orElse(depth.value());
        return numbers.wallAtWorkMm().orElse(Double.POSITIVE_INFINITY) <= low + chance * (high - low);
    }

    private Margin margin(
            Technique technique,
            OptionNumbers numbers,
            Function<HeatSpread, Optional<WarmedSpread>> where,
            String red,
            String what,
            List<String> open) {
        return switch (technique.family()) {
            case FOAM, MECHANOCHEMICAL, ADHESIVE -> Margin.FULL;
            case HEAT ->
                spread(numbers)
                        .flatMap(where)
                        .map(warmed -> Margin.of(warmed.peakC(), knowledge.value(BODY), knowledge.value(red)))
                        .orElseGet(() -> noMargin(what, open));
            case FOCUSED_ULTRASOUND -> noMargin(what, open);
        };
    }

    private static Margin noMargin(String what, List<String> open) {
        none("warmth of the " + what + " is not computed: no margin is counted", open);
        return Margin.NONE;
    }

    private static Optional<HeatSpread> spread(OptionNumbers numbers) {
        return numbers.heat().flatMap(HeatOutlook::proposed).map(ProposedSetting::spread);
    }

    private Quantiles durability(Technique technique, String vein, List<String> open) {
        Quantiles found = rates.get(rates(technique.id(), vein));
        if (found != null) {
            return found;
        }
        open.add("no rate of lasting closure is recorded for this vein: drawn from nought to one");
        return Quantiles.open();
    }

    private static List<FirmnessAdvice.Rate> told(List<PublishedRate> rates) {
        return rates.stream()
                .map(rate -> new FirmnessAdvice.Rate(
                        rate.id(),
                        rate.says(),
                        rate.share(),
                        rate.months(),
                        rate.measuredWith(),
                        rate.provenance().source(),
                        rate.provenance().standing()))
                .toList();
    }

    private double fewNeedles(Technique technique, OptionNumbers numbers, List<String> open) {
        return switch (technique.family()) {
            case FOAM, MECHANOCHEMICAL, ADHESIVE -> 1;
            case HEAT, FOCUSED_ULTRASOUND -> below(numbers.tumescentMl(), TUMESCENT, "tumescent volume", open);
        };
    }

    private double below(OptionalDouble value, String worst, String what, List<String> open) {
        return value.isPresent()
                ? within01(1 - value.getAsDouble() / knowledge.value(worst))
                : none(what + " cannot be told: taken as the worst", open);
    }

    private static double none(String why, List<String> open) {
        open.add(why);
        return 0;
    }

    private static double within01(double worth) {
        return Math.max(0, Math.min(1, worth));
    }
}
