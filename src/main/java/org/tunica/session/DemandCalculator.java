package org.tunica.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.physics.OptionNumbers;

/** What treating a segment with a technique takes of what a session shares. */
final class DemandCalculator {
    private static final String POLIDOCANOL = Room.SclerosantDrug.POLIDOCANOL.word();

    private final Knowledge knowledge;
    private final SessionConstants constants;
    private final TimeEstimate time;

    DemandCalculator(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.constants = new SessionConstants(knowledge);
        this.time = new TimeEstimate(knowledge, constants);
    }

    Demand of(CaseFile caseFile, Segment segment, Technique technique, OptionNumbers numbers) {
        Tally tally = new Tally();
        if (usesAnaesthetic(technique)) {
            tally.take(Shared.LIDOCAINE, numbers.lidocaineMgPerKg());
        }
        if (technique.family() == Family.FOAM) {
            tally.take(Shared.FOAM, numbers.foamMl());
        }
        if (!technique.drugs().isEmpty()) {
            drug(technique, numbers, tally);
        }
        List<TimePart> parts = time.parts(technique, segment, numbers);
        tally.take(Shared.TIME, parts.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(minutes(parts)));
        return new Demand(
                tally.amounts, tally.unknown, position(caseFile, segment, technique), generator(technique), parts);
    }

    private static boolean usesAnaesthetic(Technique technique) {
        return technique.family() == Family.HEAT || technique.family() == Family.FOCUSED_ULTRASOUND;
    }

    private void drug(Technique technique, OptionNumbers numbers, Tally tally) {
        boolean polidocanol = numbers.drug()
                .map(stock -> stock.drug().equals(POLIDOCANOL))
                .orElse(technique.drugs().contains(POLIDOCANOL));
        if (polidocanol) {
            tally.take(Shared.POLIDOCANOL, numbers.sclerosantMgPerKg());
            if (technique.family() != Family.FOAM) {
                tally.take(Shared.POLIDOCANOL_LIQUID, numbers.drugMl());
            }
        } else {
            tally.take(Shared.TETRADECYL, tetradecylShare(technique, numbers));
        }
    }

    /** Volume as a share of the ceiling for its form and strength, so that foam and liquids add up. */
    private OptionalDouble tetradecylShare(Technique technique, OptionNumbers numbers) {
        if (technique.family() == Family.FOAM) {
            return over(numbers.foamMl(), tetradecylFoamMostMl(knowledge));
        }
        double percent = numbers.drug().map(OptionNumbers.Stock::percent).orElse(Double.MAX_VALUE);
        return over(numbers.drugMl(), tetradecylLiquidMostMl(knowledge, percent));
    }

    static double tetradecylFoamMostMl(Knowledge knowledge) {
        return knowledge.value("foam.sts.label.max");
    }

    static double tetradecylLiquidMostMl(Knowledge knowledge, double percent) {
        return knowledge.value(
                percent <= knowledge.value("session.sts.weak")
                        ? "dose.sts.liquid-session"
                        : "dose.sts.strong-liquid-session");
    }

    private static OptionalDouble over(OptionalDouble amount, double limit) {
        return amount.isPresent() ? OptionalDouble.of(amount.getAsDouble() / limit) : amount;
    }

    /** The small saphenous vein and what lies behind the knee are reached from behind. */
    private static Position position(CaseFile caseFile, Segment segment, Technique technique) {
        boolean behind = segment.vein() == Segment.Vein.SMALL_SAPHENOUS || segment.level() == Segment.Level.POPLITEAL;
        if (behind) {
            return Position.PRONE;
        }
        boolean headDown = technique.family() != Family.ADHESIVE
                && caseFile.patient().canLie().headDown().orElse(false);
        return headDown ? Position.SUPINE_HEAD_DOWN : Position.SUPINE;
    }

    private static Optional<String> generator(Technique technique) {
        return technique.generator();
    }

    private static double minutes(List<TimePart> parts) {
        return parts.stream().mapToDouble(TimePart::workMinutes).sum();
    }

    /** Amounts as they are told, and what cannot be told. */
    private static final class Tally {
        private final Map<Shared, Double> amounts = new EnumMap<>(Shared.class);
        private final List<Shared> unknown = new ArrayList<>();

        void take(Shared shared, OptionalDouble amount) {
            amount.ifPresentOrElse(known -> amounts.put(shared, known), () -> unknown.add(shared));
        }
    }
}
