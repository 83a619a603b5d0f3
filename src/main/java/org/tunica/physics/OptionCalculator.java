package org.tunica.physics;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.SettingRange;
import org.tunica.knowledge.Technique;

/** Computes {@link OptionNumbers} for one technique and one segment. */
final class OptionCalculator {
    private static final double MG_PER_ML_OF_ONE_PERCENT = 10;
    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    private final HeatPlanner heat;
    private final Outlooks outlooks;
    private final StrongFoam strongFoam;
    private final CaseFile caseFile;
    private final Segment segment;
    private final SegmentNumbers numbers;

    OptionCalculator(
            HeatPlanner heat,
            Outlooks outlooks,
            StrongFoam strongFoam,
            CaseFile caseFile,
            Segment segment,
            SegmentNumbers numbers) {
        this.heat = heat;
        this.outlooks = outlooks;
        this.strongFoam = strongFoam;
        this.caseFile = caseFile;
        this.segment = segment;
        this.numbers = numbers;
    }

    OptionNumbers numbers(Technique technique) {
        return switch (technique.family()) {
            case HEAT -> heat(technique);
            case FOAM -> foam(technique);
            case MECHANOCHEMICAL -> mechanochemical(technique);
            case FOCUSED_ULTRASOUND -> focused(technique);
            case ADHESIVE -> adhesive();
        };
    }

    private OptionNumbers heat(Technique technique) {
        OptionalDouble tumescentMl = Maybe.map(
                segment.lengthCm(),
                cm -> cm * technique.quantity("tumescentMlPerCm").value());
        Optional<Boolean> bloodless = Maybe.and(numbers.headDownPossible(), tumescent());
        double radiusMm = heat.radiusMm(technique.id(), bloodless.equals(Optional.of(false)));
        Optional<HeatOutlook> outlook = outlooks.outlook(technique.id(), caseFile, segment, numbers.wall(), bloodless);
        return new OptionNumbers(
                numbers.wall()
                        .map(wall -> OptionalDouble.of(wall.wallOnRadiusMm(radiusMm)))
                        .orElse(UNKNOWN),
                outlook.flatMap(HeatOutlook::proposed)
                        .map(found -> OptionalDouble.of(
                                Math.min(1, found.spread().delayedDepthPerWall().p50())))
                        .orElse(UNKNOWN),
                bloodless,
                tumescentMl,
                lidocaine(tumescentMl),
                Optional.empty(),
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                outlook);
    }

    private OptionNumbers foam(Technique technique) {
        double gasParts = technique.quantity("gasPartsPerLiquidPart").value();
        OptionalDouble foamMl = Maybe.positive(numbers.lumenVolumeMl());
        return drugged(technique, Maybe.map(foamMl, ml -> ml / (1 + gasParts)), foamMl);
    }

    private OptionNumbers mechanochemical(Technique technique) {
        OptionalDouble drugMl = Maybe.map(
                segment.lengthCm(), cm -> cm * technique.quantity("drugMlPerCm").value());
        return drugged(technique, drugMl, UNKNOWN);
    }

    private OptionNumbers drugged(Technique technique, OptionalDouble drugMl, OptionalDouble foamMl) {
        Optional<OptionNumbers.Stock> drug = stock(technique);
        return new OptionNumbers(
                numbers.relaxedWallMm(),
                chemical(technique),
                numbers.headDownPossible(),
                UNKNOWN,
                UNKNOWN,
                drug,
                drugMl,
                foamMl,
                perKg(mass(drugMl, drug)),
                UNKNOWN,
                Optional.empty());
    }

    private OptionNumbers focused(Technique technique) {
        FocusCoverage focus = new FocusCoverage(
                technique.quantity("focusWidthMm").value(),
                technique.quantity("focusHeightMm").value(),
                technique.quantity("lesionSpacingMm").value());
        OptionalDouble share = numbers.wall()
                .map(wall -> OptionalDouble.of(focus.share(wall.collapsedOuterDiameterMm())))
                .orElse(UNKNOWN);
        OptionalDouble tumescentMl = Maybe.map(
                segment.lengthCm(),
                cm -> cm
                        * technique.quantity("tumescentMlPerCm").value()
                        * technique.quantity("tumescentShare").value());
        return new OptionNumbers(
                numbers.collapsedWallMm(),
                share,
                numbers.headDownPossible(),
                tumescentMl,
                lidocaine(tumescentMl),
                Optional.empty(),
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                Maybe.map(Maybe.positive(segment.lengthCm()), focus::lesions),
                Optional.empty());
    }

    private OptionNumbers adhesive() {
        return new OptionNumbers(
                numbers.collapsedWallMm(),
                UNKNOWN,
                numbers.headDownPossible(),
                UNKNOWN,
                UNKNOWN,
                Optional.empty(),
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                Optional.empty());
    }

    private OptionalDouble chemical(Technique technique) {
        double depthMm = technique.quantity("killDepthMm").value();
        return Maybe.map(numbers.relaxedWallMm(), wall -> ChemicalKill.wallFraction(depthMm, wall));
    }

    /** A room whose tumescent mix is described has one; a room that says nothing of it leaves it unknown. */
    private Optional<Boolean> tumescent() {
        return caseFile.room().tumescent().map(mix -> true);
    }

    private OptionalDouble lidocaine(OptionalDouble tumescentMl) {
        OptionalDouble percent = caseFile.room()
                .tumescent()
                .map(Room.Tumescent::lidocainePercent)
                .orElse(UNKNOWN);
        return perKg(Maybe.both(tumescentMl, percent, OptionCalculator::liquidMg));
    }

    private OptionalDouble mass(OptionalDouble ml, Optional<OptionNumbers.Stock> drug) {
        return drug.isEmpty()
                ? UNKNOWN
                : Maybe.map(ml, volume -> liquidMg(volume, drug.get().percent()));
    }

    /** One per cent is ten milligrams in a millilitre. */
    private static double liquidMg(double ml, double percent) {
        return ml * percent * MG_PER_ML_OF_ONE_PERCENT;
    }

    private OptionalDouble perKg(OptionalDouble mg) {
        return Maybe.both(mg, Maybe.positive(caseFile.patient().weightKg()), (mass, kg) -> mass / kg);
    }

    /**
     * The drug the room would use: in the order of the technique's list the first that is stocked and not an allergy, at
     * its weakest strength that reaches the customary range, or else the strongest there is.
     */
    private Optional<OptionNumbers.Stock> stock(Technique technique) {
        return technique.drugs().stream()
                .filter(drug -> !caseFile.patient()
                        .allergies()
                        .map(ids -> ids.contains(drug))
                        .orElse(false))
                .flatMap(drug -> strength(technique, drug).stream())
                .findFirst();
    }

    private Optional<OptionNumbers.Stock> strength(Technique technique, String drug) {
        double low = weakest(technique);
        return percents(drug)
                .filter(percent -> percent >= low)
                .min(Comparator.naturalOrder())
                .or(() -> percents(drug).max(Comparator.naturalOrder()))
                .map(percent -> new OptionNumbers.Stock(drug, percent));
    }

    /** A wide trunk takes strong foam, so its dose is reckoned with the strong one; else the customary range begins it. */
    private double weakest(Technique technique) {
        if (technique.family() == Family.FOAM && strongFoam.isFor(segment.vein(), numbers.relaxedLumenMm())) {
            return strongFoam.percent();
        }
        SettingRange range = technique.settings().get("sclerosantPercent");
        return range == null ? 0 : range.low().orElse(0);
    }

    private Stream<Double> percents(String drug) {
        return caseFile.room().sclerosants().stream()
                .flatMap(stock -> stock.stream())
                .filter(stock -> stock.drug().word().equals(drug))
                .map(Room.Sclerosant::percent);
    }
}
