package org.tunica.heat;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Searches the highest power with the shortest time that kills the whole wall with the wished probability without char,
 * perforation, or a nerve or skin past its red line; that high power and short time warm least around the vein is
 * common practice, no source.
 *
 * <p>First it asks for death at once. Where no setting gives that within the limits it asks for death at once or later,
 * which common practice counts as closure of the wall too. Where nothing gives that either it proposes a compromise: the
 * deepest setting within every limit if it comes near the outer wall, else one that spares at least nerve and skin, the one
 * that reaches through with the least char or the one that reaches deepest; and it names the limit that stands in the way.
 *
 * <p>The model with its constants as they stand decides where to look, a few draws narrow it down, all draws decide. A
 * nerve, the skin and the whole wall keep their limits when nine draws of ten do.
 */
public final class SettingProposer {
    private static final int FEW_DRAWS = 12;
    private static final int POWERS_PASSED_OVER = 3;

    /** By how much a few draws may fall short of the wished probability and still give hope; a margin of the search. */
    private static final double LENIENCE = 0.1;

    /**
     * Depth in walls, with the constants as they stand, below which no draw is worth taking, and from which draws are
     * taken; margins of the search, no clinical numbers.
     */
    private static final double FAR_FROM_THROUGH = 0.95;

    private static final double NEARLY_THROUGH = 0.8;

    /** A compromise should not stop at the very edge of the wall; no clinical number, a margin of the search. */
    private static final double WELL_THROUGH = 1.1;

    private final HeatModel model;
    private final HeatModel scout;
    private final HeatEnsemble ensemble;
    private final HeatEnsemble few;
    private final HeatLimits limits;

    private SettingProposer(HeatModel model, HeatEnsemble ensemble, HeatLimits limits) {
        this.model = model;
        this.scout = HeatModel.of(model.constants(), Fineness.DRAWN);
        this.ensemble = ensemble;
        this.few = ensemble.first(FEW_DRAWS);
        this.limits = limits;
    }

    /**
     * A search under some limits.
     *
     * @param model tells what the proposed setting does; a coarser one of the same constants decides where to look
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
        private final Map<HeatSetting, HeatSpread> fewDrawn = new HashMap<>();
        private final Map<HeatSetting, HeatSpread> allDrawn = new HashMap<>();
        private final Map<Death, Map<Integer, Rung>> rungs = new EnumMap<>(Death.class);

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

        /** The highest power that gives the death asked for within every limit; a few draws find it, all confirm it. */
        private Optional<ProposedSetting> within(Death death) {
            for (int i = highest(death); i < ladders.size(); i++) {
                Rung rung = confirmed(rung(i, death), death);
                if (rung.spread().isPresent()) {
                    SettingLimit stronger = i == 0
                            ? SettingLimit.HIGHEST_POWER
                            : rung(i - 1, death).limit();
                    return Optional.of(answer(rung.spread().get(), death, stronger));
                }
                rungs.get(death).put(i, rung);
            }
            return Optional.empty();
        }

        /** The highest power at which a few draws see hope: wide steps down, then back up; the size when there is none. */
        private int highest(Death death) {
            for (int i = 0; i < ladders.size(); i += POWERS_PASSED_OVER) {
                if (!rung(i, death).open().isEmpty()) {
                    int from = Math.max(0, i - POWERS_PASSED_OVER + 1);
                    return IntStream.rangeClosed(from, i)
                            .filter(higher -> !rung(higher, death).open().isEmpty())
                            .findFirst()
                            .orElse(i);
                }
            }
            return ladders.size();
        }

        private Rung rung(int power, Death death) {
            Map<Integer, Rung> known = rungs.computeIfAbsent(death, wanted -> new HashMap<>());
            Rung rung = known.get(power);
            if (rung == null) {
                rung = hoped(ladders.get(power), death);
                known.put(power, rung);
            }
            return rung;
        }

        /** Settings of a ladder that give the death asked for within every limit, as far as a few draws can tell. */
        private Rung hoped(List<HeatSetting> ladder, Death death) {
            int over = firstIndex(ladder, setting -> broken(run(setting)).isPresent());
            SettingLimit limit =
                    over < ladder.size() ? broken(run(ladder.get(over))).orElseThrow() : SettingLimit.LONGEST_TIME;
            if (over == 0 || death.depthPerWall(run(ladder.get(over - 1))) < FAR_FROM_THROUGH) {
                return Rung.none(limit);
            }
            int near =
                    firstIndex(ladder.subList(0, over), setting -> death.depthPerWall(run(setting)) >= NEARLY_THROUGH);
            List<HeatSetting> open = ladder.subList(Math.min(near, over - 1), over);
            if (!hopeful(open.get(open.size() - 1), death)) {
                return Rung.none(limit);
            }
            int first = firstIndex(open, setting -> hopeful(setting, death));
            if (byFew(open.get(first)).charProbability() > limits.mostCharProbability() + LENIENCE) {
                return Rung.none(SettingLimit.CHAR);
            }
            return new Rung(open.subList(first, open.size()), Optional.empty(), limit);
        }

        private boolean hopeful(HeatSetting setting, Death death) {
            HeatSpread spread = byFew(setting);
            return death.probability(spread) >= limits.wishedKillProbability() - LENIENCE;
        }

        /** Shortest time of a rung at which all draws agree. */
        private Rung confirmed(Rung rung, Death death) {
            for (HeatSetting setting : rung.open()) {
                HeatSpread spread = byAll(setting);
                if (broken(spread).isPresent()) {
                    return Rung.none(broken(spread).get());
                }
                if (likely(spread, death)) {
                    return new Rung(rung.open(), Optional.of(spread), rung.limit());
                }
            }
            return Rung.none(rung.limit());
        }

        private boolean likely(HeatSpread spread, Death death) {
            return death.probability(spread) >= limits.wishedKillProbability();
        }

        /** What keeps every limit and comes near the outer wall; else what spares at least nerve and skin. */
        private ProposedSetting compromise() {
            return gentle().orElseGet(this::deepest);
        }

        /** The deepest setting within every limit, if it comes near the outer wall. */
        private Optional<ProposedSetting> gentle() {
            return looked().map(this::longestWithin)
                    .flatMap(Optional::stream)
                    .max(Comparator.comparing(place -> Death.AT_ONCE_OR_LATER.depthPerWall(place.run())))
                    .filter(place -> Death.AT_ONCE_OR_LATER.depthPerWall(place.run()) >= NEARLY_THROUGH)
                    .map(this::settled);
        }

        /** Longest time of a ladder that keeps every limit, by the model and by a few draws. */
        private Optional<Place> longestWithin(List<HeatSetting> ladder) {
            int over = firstIndex(ladder, setting -> broken(run(setting)).isPresent());
            List<HeatSetting> open = ladder.subList(0, over);
            int drawnOver = firstIndex(open, setting -> broken(byFew(setting)).isPresent());
            if (drawnOver == 0) {
                return Optional.empty();
            }
            SettingLimit limit = drawnOver < over
                    ? broken(byFew(ladder.get(drawnOver))).orElseThrow()
                    : over < ladder.size() ? broken(run(ladder.get(over))).orElseThrow() : SettingLimit.LONGEST_TIME;
            return Optional.of(new Place(run(ladder.get(drawnOver - 1)), true, false, limit));
        }

        /** All draws have the last word on what a place does and which limit it breaks, if it breaks one. */
        private ProposedSetting settled(Place place) {
            HeatSpread spread = byAll(place.run().setting());
            Death death = likely(spread, Death.AT_ONCE_OR_LATER) ? Death.AT_ONCE_OR_LATER : Death.NOT_THROUGH;
            return answer(spread, death, broken(spread).orElse(place.limit()));
        }

        private Stream<List<HeatSetting>> looked() {
            return IntStream.range(0, ladders.size())
                    .filter(i -> i % POWERS_PASSED_OVER == 0)
                    .mapToObj(ladders::get);
        }

        /** The best place of any ladder that spares nerve and skin, by the model alone, then by all draws. */
        private ProposedSetting deepest() {
            Place best = looked().map(this::deepestThatSpares)
                    .max(Comparator.comparing(Place::spares)
                            .thenComparing(Place::through)
                            .thenComparing(
                                    place -> place.through() ? -place.run().charIndex() : 0)
                            .thenComparing(place -> Death.AT_ONCE_OR_LATER.depthPerWall(place.run())))
                    .orElseThrow();
            return settled(best);
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
            return runs.computeIfAbsent(setting, wanted -> scout.run(wanted, slice));
        }

        private HeatSpread byFew(HeatSetting setting) {
            return fewDrawn.computeIfAbsent(setting, wanted -> few.run(wanted, slice, measured));
        }

        private HeatSpread byAll(HeatSetting setting) {
            return allDrawn.computeIfAbsent(setting, wanted -> ensemble.run(wanted, slice, measured));
        }

        private ProposedSetting answer(HeatSpread spread, Death death, SettingLimit limit) {
            return new ProposedSetting(
                    spread.setting(),
                    model.run(spread.setting(), slice),
                    spread,
                    death,
                    broken(spread).isEmpty(),
                    limit);
        }
    }

    /** What a ladder offers: settings that may do, the spread of the one that does, and what limits the ladder. */
    private record Rung(List<HeatSetting> open, Optional<HeatSpread> spread, SettingLimit limit) {
        static Rung none(SettingLimit limit) {
            return new Rung(List.of(), Optional.empty(), limit);
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
