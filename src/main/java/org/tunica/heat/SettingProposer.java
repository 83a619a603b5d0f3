package org.tunica.heat;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Searches the highest power with the shortest time that kills the whole wall with the wished probability without char,
 * perforation, or a nerve or skin past its red line; that high power and short time warm least around the vein is
 * common practice, no source.
 *
 * <p>First it asks for death at once. Where no setting gives that within the limits it asks for death at once or later,
 * which common practice counts as closure of the wall too. Where nothing gives that either it proposes a compromise that
 * never passes the lines of nerve and skin: the setting that reaches through with the least char, or the one that reaches
 * deepest; and it names the limit that stands in the way.
 *
 * <p>The model with its constants as they stand decides where to look, a few draws narrow it down, all draws decide. A
 * nerve, the skin and the whole wall keep their limits when nine draws of ten do.
 */
public final class SettingProposer {
    private static final int FEW_DRAWS = 8;

    /** Share of the wished probability below which a few draws are enough to turn away; a margin of the search. */
    private static final double HOPELESS = 0.7;

    /** Depth in walls, with the constants as they stand, below which no draw is worth taking; a margin of the search. */
    private static final double FAR_FROM_THROUGH = 0.8;

    /** A compromise should not stop at the very edge of the wall; no clinical number, a margin of the search. */
    private static final double WELL_THROUGH = 1.1;

    private final HeatModel model;
    private final HeatEnsemble ensemble;
    private final HeatEnsemble few;
    private final HeatLimits limits;

    private SettingProposer(HeatModel model, HeatEnsemble ensemble, HeatLimits limits) {
        this.model = model;
        this.ensemble = ensemble;
        this.few = ensemble.first(FEW_DRAWS);
        this.limits = limits;
    }

    /**
     * A search under some limits.
     *
     * @param model decides where to look
     * @param ensemble decides what is proposed
     */
    public static SettingProposer of(HeatModel model, HeatEnsemble ensemble, HeatLimits limits) {
        return new SettingProposer(model, ensemble, limits);
    }

    /**
     * Proposes a setting of a device for a slice.
     *
     * @throws IllegalArgumentException for an unknown device or an input the model refuses
     */
    public ProposedSetting propose(String deviceId, VeinSlice slice, MeasurementSpread spread) {
        return new Search(deviceId, slice, spread).proposed();
    }

    /** One search; a ladder holds the settings of one power from the shortest to the longest time. */
    private final class Search {
        private final VeinSlice slice;
        private final MeasurementSpread measured;
        private final List<List<HeatSetting>> ladders;
        private final Map<HeatSetting, HeatRun> runs = new HashMap<>();

        Search(String deviceId, VeinSlice slice, MeasurementSpread measured) {
            this.slice = slice;
            this.measured = measured;
            ladders = model.constants().device(deviceId).ladders(deviceId, limits);
        }

        ProposedSetting proposed() {
            return within(Death.AT_ONCE)
                    .or(() -> within(Death.AT_ONCE_OR_LATER))
                    .orElseGet(this::compromise);
        }

        /** The highest power that gives the death asked for within every limit. */
        private Optional<ProposedSetting> within(Death death) {
            SettingLimit stronger = SettingLimit.HIGHEST_POWER;
            for (List<HeatSetting> ladder : ladders) {
                Rung rung = firstLikely(ladder, death);
                if (rung.spread().isPresent()) {
                    return Optional.of(answer(rung.spread().get(), death, stronger));
                }
                stronger = rung.limit();
            }
            return Optional.empty();
        }

        /** Shortest time that gives the death asked for with the wished probability within every limit. */
        private Rung firstLikely(List<HeatSetting> ladder, Death death) {
            int over = firstIndex(ladder, setting -> broken(run(setting)).isPresent());
            SettingLimit limit =
                    over < ladder.size() ? broken(run(ladder.get(over))).orElseThrow() : SettingLimit.LONGEST_TIME;
            if (over == 0 || hopeless(ladder.get(over - 1), death)) {
                return Rung.none(limit);
            }
            List<HeatSetting> open = ladder.subList(0, over);
            int start = firstIndex(open, setting -> likely(few.run(setting, slice, measured), death));
            for (HeatSetting setting : open.subList(Math.max(0, start - 1), open.size())) {
                HeatSpread spread = ensemble.run(setting, slice, measured);
                if (broken(spread).isPresent()) {
                    return Rung.none(broken(spread).get());
                }
                if (likely(spread, death)) {
                    return new Rung(Optional.of(spread), limit);
                }
            }
            return Rung.none(limit);
        }

        private boolean hopeless(HeatSetting longest, Death death) {
            return death.depthPerWall(run(longest)) < FAR_FROM_THROUGH
                    || death.probability(few.run(longest, slice, measured)) < HOPELESS * limits.wishedKillProbability();
        }

        private boolean likely(HeatSpread spread, Death death) {
            return death.probability(spread) >= limits.wishedKillProbability();
        }

        /** The best place of any ladder that keeps nerve and skin, by the model alone, then by all draws. */
        private ProposedSetting compromise() {
            Place best = ladders.stream()
                    .map(this::deepestThatSpares)
                    .max(Comparator.comparing(Place::spares)
                            .thenComparing(Place::through)
                            .thenComparing(
                                    place -> place.through() ? -place.run().charIndex() : 0)
                            .thenComparing(place -> Death.AT_ONCE_OR_LATER.depthPerWall(place.run())))
                    .orElseThrow();
            HeatSpread spread = ensemble.run(best.run().setting(), slice, measured);
            Death death = likely(spread, Death.AT_ONCE_OR_LATER) ? Death.AT_ONCE_OR_LATER : Death.NOT_THROUGH;
            return answer(spread, death, broken(spread).orElse(best.limit()));
        }

        /** Shortest time of a ladder that reaches through, or the longest that still keeps nerve and skin. */
        private Place deepestThatSpares(List<HeatSetting> ladder) {
            int over = firstIndex(ladder, setting -> harms(run(setting)).isPresent());
            int through =
                    firstIndex(ladder, setting -> Death.AT_ONCE_OR_LATER.depthPerWall(run(setting)) >= WELL_THROUGH);
            if (through < over) {
                return new Place(run(ladder.get(through)), true, true, SettingLimit.LONGEST_TIME);
            }
            SettingLimit limit =
                    over < ladder.size() ? harms(run(ladder.get(over))).orElseThrow() : SettingLimit.LONGEST_TIME;
            return new Place(run(ladder.get(Math.max(0, over - 1))), over > 0, false, limit);
        }

        private HeatRun run(HeatSetting setting) {
            return runs.computeIfAbsent(setting, wanted -> model.run(wanted, slice));
        }

        private ProposedSetting answer(HeatSpread spread, Death death, SettingLimit limit) {
            return new ProposedSetting(
                    spread.setting(),
                    run(spread.setting()),
                    spread,
                    death,
                    broken(spread).isEmpty(),
                    limit);
        }
    }

    /** What a ladder offers, or the limit that keeps it from offering anything. */
    private record Rung(Optional<HeatSpread> spread, SettingLimit limit) {
        static Rung none(SettingLimit limit) {
            return new Rung(Optional.empty(), limit);
        }
    }

    /** A place on a ladder: whether it spares nerve and skin, whether it reaches through, and what stops it. */
    private record Place(HeatRun run, boolean spares, boolean through, SettingLimit limit) {}

    /** First setting of a ladder for which something holds that goes on holding, or the size when none. */
    private static int firstIndex(List<HeatSetting> ladder, Predicate<HeatSetting> holds) {
        int low = 0;
        int high = ladder.size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (holds.test(ladder.get(middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private Optional<SettingLimit> broken(HeatRun run) {
        if (run.chars()) {
            return Optional.of(SettingLimit.CHAR);
        }
        return run.perforationIndex() >= limits.mostPerforationIndex()
                ? Optional.of(SettingLimit.PERFORATION)
                : harms(run);
    }

    private Optional<SettingLimit> harms(HeatRun run) {
        if (run.nerve().filter(point -> !limits.nerve().accepts(point)).isPresent()) {
            return Optional.of(SettingLimit.NERVE);
        }
        return run.skin().filter(point -> !limits.skin().accepts(point)).map(point -> SettingLimit.SKIN);
    }

    private Optional<SettingLimit> broken(HeatSpread spread) {
        if (spread.charProbability() > limits.mostCharProbability()) {
            return Optional.of(SettingLimit.CHAR);
        }
        if (spread.perforationIndex().p90() >= limits.mostPerforationIndex()) {
            return Optional.of(SettingLimit.PERFORATION);
        }
        if (tooWarm(spread.nerve(), limits.nerve())) {
            return Optional.of(SettingLimit.NERVE);
        }
        return tooWarm(spread.skin(), limits.skin()) ? Optional.of(SettingLimit.SKIN) : Optional.empty();
    }

    private static boolean tooWarm(Optional<WarmedSpread> point, HeatLimits.Warmth warmth) {
        return point.filter(spread -> spread.peakC().p90() >= warmth.redPeakC()
                        || spread.cem43Min().p90() >= warmth.redCem43Min())
                .isPresent();
    }
}
