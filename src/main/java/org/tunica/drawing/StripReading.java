package org.tunica.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.Predicted;

/** What the strip shows of an option, read from the advice and the distances the scan recorded. */
final class StripReading {
    private static final String AT_ONCE = "depth dead at once";
    private static final String LATER_IN_WALLS = "depth dead at once or later in walls";

    private final Segment segment;

    StripReading(Segment segment) {
        this.segment = segment;
    }

    /** What is excluded or not in the room is told elsewhere, with its reason. */
    static boolean shown(OptionAdvice option) {
        return option.standing().ranked() || option.standing() == OptionStanding.MEASURE_FIRST;
    }

    /** The row of an option; none without a wall to draw. */
    Optional<StripRow> row(OptionAdvice option) {
        Predicted predicted = option.predicted();
        if (predicted.wallAtWorkMm().isEmpty()) {
            return Optional.empty();
        }
        double wallMm = predicted.wallAtWorkMm().getAsDouble();
        return Optional.of(new StripRow(
                option.rank(),
                option.technique(),
                option.says(),
                option.family(),
                option.standing(),
                wallMm,
                atOnce(option, wallMm),
                later(predicted, wallMm),
                beside(option, wallMm),
                StripWords.outcome(option)));
    }

    private static Optional<Reach> atOnce(OptionAdvice option, double wallMm) {
        Predicted predicted = option.predicted();
        if (option.family() == Family.HEAT) {
            return spread(predicted, AT_ONCE)
                    .or(() -> known(predicted.killDepthMm()).map(Reach::exactly));
        }
        return known(predicted.wallFractionKilled()).map(share -> Reach.exactly(share * wallMm));
    }

    private static Optional<Reach> later(Predicted predicted, double wallMm) {
        return spread(predicted, LATER_IN_WALLS).map(walls -> walls.times(wallMm));
    }

    private static Optional<Reach> spread(Predicted predicted, String of) {
        return found(predicted, of).map(spread -> new Reach(spread.low(), spread.middle(), spread.high()));
    }

    private static Optional<Predicted.Spread> found(Predicted predicted, String of) {
        return predicted
                .heat()
                .flatMap(heat -> heat.spreads().stream()
                        .filter(spread -> spread.of().equals(of))
                        .findFirst());
    }

    private List<Warmed> beside(OptionAdvice option, double wallMm) {
        List<Warmed> beside = new ArrayList<>();
        known(segment.nerve().gapMm())
                .ifPresent(gapMm -> beside.add(new Warmed(
                        segment.nerve()
                                .name()
                                .map(name -> name.word() + " nerve")
                                .orElse("nerve"),
                        wallMm + gapMm,
                        peak(option, "peak at the nerve"))));
        known(segment.depthToSkinMm())
                .ifPresent(
                        depthMm -> beside.add(new Warmed("skin", wallMm + depthMm, peak(option, "peak at the skin"))));
        return beside;
    }

    private static Optional<Warmed.Peak> peak(OptionAdvice option, String of) {
        return found(option.predicted(), of)
                .map(spread -> new Warmed.Peak(spread.low(), spread.middle(), spread.high()));
    }

    private static <T> Optional<Double> known(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
