package org.tunica.treatment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.FieldReader;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;

/** Contradictions between the numbers of one delivered segment, which no single range can see. */
final class DeliveredChecks {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final Knowledge knowledge;
    private final DeliveredLimits limits;
    private final DeliveredSegment segment;
    private final FieldReader reader;

    DeliveredChecks(Knowledge knowledge, DeliveredLimits limits, DeliveredSegment segment, FieldReader reader) {
        this.knowledge = knowledge;
        this.limits = limits;
        this.segment = segment;
        this.reader = reader;
    }

    void check() {
        if (!reader.readable()) {
            return;
        }
        doneOrNot();
        segment.technique().map(id -> knowledge.technique(id).family()).ifPresent(this::meansOfItsFamily);
        segment.heat().ifPresent(heat -> balance("heat", heat, segment.treatedLengthCm()));
        stretches();
        foam();
        if (exceeds(segment.closingDuplex().closedLengthCm(), segment.treatedLengthCm())) {
            reader.fault("closingDuplex.closedLengthCm", "more cannot be closed than treatedLengthCm");
        }
    }

    private void doneOrNot() {
        boolean something = segment.heat().isPresent()
                || segment.stretches().isPresent()
                || segment.sclerosant().isPresent()
                || segment.adhesive().isPresent()
                || segment.lesions().isPresent()
                || segment.treatedLengthCm().isPresent();
        if (segment.notDone().isPresent() && something) {
            reader.fault("notDone", "says that nothing was done, yet a treatment is recorded beside it");
        }
        if (segment.notDone().isEmpty() && !reader.has("technique")) {
            reader.fault("technique", "must be given, or notDone with the reason");
        }
    }

    private void meansOfItsFamily(Family family) {
        boolean drug = family == Family.FOAM || family == Family.MECHANOCHEMICAL;
        stray("heat", segment.heat(), family == Family.HEAT);
        stray("stretches", segment.stretches(), family == Family.HEAT);
        stray("sclerosant", segment.sclerosant(), drug);
        stray("adhesive", segment.adhesive(), family == Family.ADHESIVE);
        if (segment.lesions().isPresent()) {
            stray("lesions", Optional.of(segment.lesions()), family == Family.FOCUSED_ULTRASOUND);
        }
    }

    private void stray(String field, Optional<?> means, boolean fits) {
        if (means.isPresent() && !fits) {
            reader.fault(
                    field,
                    "does not go with the technique " + segment.technique().orElseThrow());
        }
    }

    private void balance(String place, DeliveredHeat heat, OptionalDouble wholeCm) {
        HeatBalance balance = HeatBalance.of(heat, wholeCm, limits.agreementShare());
        balance.contradictions().forEach(says -> reader.fault(place, says));
        boolean whole = balance.value(HeatBalance.Number.POWER).isPresent()
                && balance.value(HeatBalance.Number.PULLBACK).isPresent();
        if (heat.leedJPerCm().isPresent() && !whole) {
            reader.fault(
                    place + ".leedJPerCm",
                    "says nothing without power or pullback; give one of them and the other is computed");
        }
    }

    private void stretches() {
        List<DeliveredHeat> stretches = segment.stretches().orElse(List.of());
        for (int i = 0; i < stretches.size(); i++) {
            String place = "stretches[" + i + "]";
            if (stretches.get(i).lengthCm().isEmpty()) {
                reader.fault(place + ".lengthCm", "must be given");
            }
            balance(place, stretches.get(i), NONE);
        }
        if (!stretches.isEmpty()) {
            sums(stretches);
        }
    }

    private void sums(List<DeliveredHeat> stretches) {
        same(
                "stretches",
                "the lengths of the stretches add up to",
                sum(stretches, HeatBalance.Number.LENGTH),
                "treatedLengthCm",
                segment.treatedLengthCm(),
                "cm");
        OptionalDouble energyJ = segment.heat().map(DeliveredHeat::totalEnergyJ).orElse(NONE);
        same(
                "stretches",
                "the energies of the stretches add up to",
                sum(stretches, HeatBalance.Number.ENERGY),
                "heat.totalEnergyJ",
                energyJ,
                "J");
    }

    private OptionalDouble sum(List<DeliveredHeat> stretches, HeatBalance.Number number) {
        double sum = 0;
        for (DeliveredHeat stretch : stretches) {
            OptionalDouble one =
                    HeatBalance.of(stretch, NONE, limits.agreementShare()).value(number);
            if (one.isEmpty()) {
                return NONE;
            }
            sum += one.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /** Foam is its liquid and its gas. */
    private void foam() {
        segment.sclerosant().ifPresent(given -> {
            if (given.liquidMl().isPresent() && given.gasParts().isPresent()) {
                same(
                        "sclerosant",
                        "liquid and gas make",
                        OptionalDouble.of(given.liquidMl().getAsDouble()
                                * (1 + given.gasParts().getAsDouble())),
                        "foamMl",
                        given.foamMl(),
                        "mL");
            }
        });
    }

    private void same(
            String place, String says, OptionalDouble sum, String field, OptionalDouble recorded, String unit) {
        if (Agreement.broken(sum, recorded, limits.agreementShare())) {
            reader.fault(
                    place,
                    says + " " + Rounded.text(sum.getAsDouble()) + " " + unit + ", " + field + " says "
                            + Rounded.text(recorded.getAsDouble()) + " " + unit + "; at most "
                            + Rounded.text(100 * limits.agreementShare()) + " % is accepted");
        }
    }

    private static boolean exceeds(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent() && a.getAsDouble() > b.getAsDouble();
    }
}
