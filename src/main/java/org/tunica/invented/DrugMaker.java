package org.tunica.invented;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.treatment.DeliveredSegment;

/** Makes up drugs and adhesive given into a vein, within what is customary. */
final class DrugMaker {
    /** Grams in 100 mL to mg in 1 mL. */
    static final double MG_PER_ML_OF_ONE_PERCENT = 10;

    private static final double MM_PER_CM = 10;
    private static final double ML_PER_MM3 = 1e-3;

    private final Distribution filling;
    private final Choice<Double> foamPercent;
    private final Choice<Double> drugPercent;
    private final double narrowMm;
    private final double wideMm;
    private final double weakPercent;
    private final double strongPercent;
    private final double leastFoamMl;
    private final double mostFoamMl;
    private final double firstGapCm;

    DrugMaker(Knowledge knowledge) {
        this.filling = knowledge.invented("invented.foam.filling");
        this.foamPercent = Choice.of(knowledge.invented("invented.foam.strength"), Double::valueOf);
        this.drugPercent = Choice.of(knowledge.invented("invented.drug.strength"), Double::valueOf);
        this.narrowMm = knowledge.value("foam.lumen.narrow");
        this.wideMm = knowledge.value("foam.lumen.wide");
        this.weakPercent = knowledge.value("foam.strength.weak");
        this.strongPercent = knowledge.value("foam.strength.strong");
        this.leastFoamMl = filling.number("least");
        this.mostFoamMl = knowledge.value("dose.foam.session");
        this.firstGapCm = knowledge.value("session.adhesive.first-gap");
    }

    /** Weak foam in a narrow vein and in a tributary, strong foam in a wide one. */
    DeliveredSegment.Sclerosant foam(Draw draw, Technique technique, MadeSegment made, Room.FoamGas gas) {
        double radiusMm = made.lumenDiameterMm() / 2;
        double lumenMl = StrictMath.PI * radiusMm * radiusMm * made.lengthCm() * MM_PER_CM * ML_PER_MM3;
        double wishedMl = lumenMl * draw.between(filling.number("low"), filling.number("high"));
        double foamMl = Math.min(mostFoamMl, Math.max(leastFoamMl, Made.rounded(wishedMl, 0)));
        double gasParts =
                technique.settings().get("gasPartsPerLiquidPart").typical().orElseThrow();
        Room.SclerosantDrug drug = technique.drugs().contains(Room.SclerosantDrug.POLIDOCANOL.word())
                ? Room.SclerosantDrug.POLIDOCANOL
                : Room.SclerosantDrug.SODIUM_TETRADECYL_SULPHATE;
        return new DeliveredSegment.Sclerosant(
                Optional.of(drug),
                OptionalDouble.of(strength(draw, made)),
                OptionalDouble.of(Made.rounded(foamMl / (1 + gasParts), 2)),
                Optional.of(gas),
                OptionalDouble.of(gasParts),
                OptionalDouble.of(foamMl));
    }

    private double strength(Draw draw, MadeSegment made) {
        boolean tributary = made.segment().vein() == Segment.Vein.TRIBUTARY;
        if (tributary || made.lumenDiameterMm() < narrowMm) {
            return weakPercent;
        }
        return made.lumenDiameterMm() > wideMm ? strongPercent : foamPercent.from(draw);
    }

    /** Liquid behind the wire; less of it, and weaker, in a light person. */
    DeliveredSegment.Sclerosant behindTheWire(Draw draw, Technique technique, double lengthCm, double mostMg) {
        double percent = drugPercent.from(draw);
        double mlPerCm = HeatMaker.between(draw, technique, "drugMlPerCm");
        if (mg(mlPerCm * lengthCm, percent) > mostMg) {
            percent = HeatMaker.low(technique.settings().get("sclerosantPercent"));
            mlPerCm = Math.min(mlPerCm, mostMg / mg(lengthCm, percent));
        }
        return new DeliveredSegment.Sclerosant(
                Optional.of(Room.SclerosantDrug.POLIDOCANOL),
                OptionalDouble.of(percent),
                OptionalDouble.of(Math.floor(mlPerCm * lengthCm * 10) / 10),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static double mg(double ml, double percent) {
        return ml * percent * MG_PER_ML_OF_ONE_PERCENT;
    }

    /** Two aliquots at the start, then one at each spacing. */
    DeliveredSegment.Adhesive adhesive(Technique technique, double lengthCm) {
        double spacingCm =
                technique.settings().get("aliquotSpacingCm").typical().orElseThrow();
        double mlEach =
                technique.settings().get("adhesiveMlPerAliquot").typical().orElseThrow();
        int aliquots = 2 + (int) Math.floor(Math.max(0, lengthCm - firstGapCm) / spacingCm);
        return new DeliveredSegment.Adhesive(
                OptionalInt.of(aliquots), OptionalDouble.of(Made.rounded(aliquots * mlEach, 1)));
    }
}
