package org.tunica.heat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Searches the highest power with the shortest time that kills the whole wall with the wished probability without char,
 * perforation, or a nerve or skin past its red line; that high power and short time warm least around the vein is
 * common practice, no source. When there is none, the setting within the limits that kills most, and the limit that
 * stands in the way.
 *
 * <p>A nerve, the skin and the whole wall keep their limits when nine draws of ten do.
 */
public final class SettingProposer {
    /** Ladders all draws look at when no setting does all that is wished. */
    private static final int LOOKED_AT = 2;

    private static final int FEW_DRAWS = 8;

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
        private SettingLimit stronger = SettingLimit.HIGHEST_POWER;

        Search(String deviceId, VeinSlice slice, MeasurementSpread measured) {
            this.slice = slice;
            this.measured = measured;
            ladders = model.constants().device(deviceId).ladders(deviceId, limits);
        }

        ProposedSetting proposed() {
            for (List<HeatSetting> ladder : ladders) {
                Optional<HeatSpread> kills = firstThatKills(ladder);
                if (kills.isPresent() && broken(kills.get()).isEmpty()) {
                    return answer(kills.get(), stronger);
                }
                stronger = kills.flatMap(this::broken).orElse(SettingLimit.LONGEST_TIME);
            }
            return compromise();
        }

        /** Shortest time on a ladder that kills as wished; empty when none does or the wall chars long before. */
        private Optional<HeatSpread> firstThatKills(List<HeatSetting> ladder) {
            int start = firstIndex(ladder, setting -> model.run(setting, slice).killDepthPerWall() >= 1);
            for (int i = start; i < ladder.size(); i++) {
                HeatSpread spread = ensemble.run(ladder.get(i), slice, measured);
                if (spread.killProbability() >= limits.wishedKillProbability()
                        || broken(spread).isPresent()) {
                    return Optional.of(spread);
                }
            }
            return Optional.empty();
        }

        /** The setting within the limits that kills most; a few draws choose where all of them look. */
        private ProposedSetting compromise() {
            Comparator<HeatSpread> merit = this::compareMerit;
            return ladders.stream()
                    .map(this::longestWithin)
                    .sorted(Comparator.comparing(Place::spread, merit).reversed())
                    .limit(LOOKED_AT)
                    .map(this::settled)
                    .max(Comparator.comparing(Answer::spread, merit))
                    .map(best -> answer(best.spread(), best.limit()))
                    .orElseThrow();
        }

        /** Longest time of a ladder within the limits: by the model alone, then by a few draws. */
        private Place longestWithin(List<HeatSetting> ladder) {
            int over = firstIndex(ladder, setting -> breaks(model.run(setting, slice)));
            List<HeatSetting> shorter = ladder.subList(0, over);
            int drawnOver = firstIndex(
                    shorter,
                    setting -> broken(few.run(setting, slice, measured)).isPresent());
            int index = Math.max(0, drawnOver - 1);
            return new Place(ladder, index, few.run(ladder.get(index), slice, measured));
        }

        /** The same place by all draws: shorter while a limit is broken, else longer while none is. */
        private Answer settled(Place place) {
            List<HeatSetting> ladder = place.ladder();
            int i = place.index();
            HeatSpread spread = ensemble.run(ladder.get(i), slice, measured);
            Optional<SettingLimit> limit = broken(spread);
            while (broken(spread).isPresent() && i > 0) {
                limit = broken(spread);
                i--;
                spread = ensemble.run(ladder.get(i), slice, measured);
            }
            while (limit.isEmpty() && i + 1 < ladder.size()) {
                i++;
                HeatSpread longer = ensemble.run(ladder.get(i), slice, measured);
                limit = broken(longer);
                spread = limit.isEmpty() ? longer : spread;
            }
            return new Answer(spread, limit.orElse(SettingLimit.LONGEST_TIME));
        }

        /** Within the limits before outside, outside with less char before more; then by what dies. */
        private int compareMerit(HeatSpread one, HeatSpread other) {
            return Comparator.comparing((HeatSpread spread) -> broken(spread).isEmpty())
                    .thenComparing(spread -> broken(spread).isEmpty() ? 0 : -spread.charProbability())
                    .thenComparing(HeatSpread::killProbability)
                    .thenComparing(HeatSpread::delayedProbability)
                    .thenComparing(spread -> spread.delayedDepthPerWall().p50())
                    .compare(one, other);
        }

        private ProposedSetting answer(HeatSpread spread, SettingLimit limit) {
            return new ProposedSetting(
                    spread.setting(),
                    model.run(spread.setting(), slice),
                    spread,
                    spread.killProbability() >= limits.wishedKillProbability(),
                    broken(spread).isEmpty(),
                    limit);
        }

        /** First setting of a ladder for which something holds that goes on holding, or the size when none. */
        private int firstIndex(List<HeatSetting> ladder, Predicate<HeatSetting> holds) {
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

        private boolean breaks(HeatRun run) {
            return run.chars()
                    || run.perforationIndex() >= limits.mostPerforationIndex()
                    || run.nerve()
                            .filter(point -> !limits.nerve().accepts(point))
                            .isPresent()
                    || run.skin().filter(point -> !limits.skin().accepts(point)).isPresent();
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
    }

    /** A place on a ladder and what a few draws say of it. */
    private record Place(List<HeatSetting> ladder, int index, HeatSpread spread) {}

    private record Answer(HeatSpread spread, SettingLimit limit) {}

    private static boolean tooWarm(Optional<WarmedSpread> point, HeatLimits.Warmth warmth) {
        return point.filter(spread -> spread.peakC().p90() >= warmth.redPeakC()
                        || spread.cem43Min().p90() >= warmth.redCem43Min())
                .isPresent();
    }
}
