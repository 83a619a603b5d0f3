package org.tunica.invented;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/** Chooses by what a segment was treated: what fits the vein, its course, the person and the room, by customary weights. */
final class Ways {
    private static final Set<Segment.Level> BELOW_KNEE =
            Set.of(Segment.Level.UPPER_CALF, Segment.Level.MID_CALF, Segment.Level.LOWER_CALF);

    private final Map<Segment.Vein, Choice<Technique>> byVein = new EnumMap<>(Segment.Vein.class);
    private final Choice<Technique> belowKnee;
    private final Distribution winding;
    private final double leastStraightCm;
    private final Map<String, Double> elementCm;
    private final double reserveCm;
    private final double wireMgPerCm;
    private final double wireMostMgPerKg;

    Ways(Knowledge knowledge) {
        for (Segment.Vein vein : Segment.Vein.values()) {
            byVein.put(vein, choice(knowledge, vein.word()));
        }
        this.belowKnee = choice(knowledge, "below-knee");
        this.winding = knowledge.invented("invented.technique.winding");
        this.leastStraightCm = knowledge.value("straight.stretch.min");
        this.elementCm = Map.of(
                "rf-segmental-7cm", knowledge.value("element.long.length"),
                "rf-segmental-3cm", knowledge.value("element.short.length"));
        this.reserveCm = knowledge.value("adhesive.tip.start");
        Technique wire = knowledge.technique("mechanochemical");
        this.wireMgPerCm = DrugMaker.mg(
                HeatMaker.low(wire.settings().get("drugMlPerCm")),
                HeatMaker.low(wire.settings().get("sclerosantPercent")));
        this.wireMostMgPerKg = knowledge.value("dose.polidocanol.day");
    }

    private static Choice<Technique> choice(Knowledge knowledge, String vein) {
        return Choice.of(knowledge.invented("invented.technique." + vein), knowledge::technique);
    }

    /** Whether the great saphenous vein lies below the knee there. */
    static boolean belowKnee(Segment.Vein vein, Segment.Level level) {
        return vein == Segment.Vein.GREAT_SAPHENOUS && BELOW_KNEE.contains(level);
    }

    /** What it was treated by; nothing when the room holds nothing that fits. */
    Optional<Technique> of(Draw draw, MadeLeg.Found found, Person person, Set<String> devices) {
        Choice<Technique> ways = belowKnee(found.vein(), found.level()) ? belowKnee : byVein.get(found.vein());
        return ways.from(
                draw,
                technique ->
                        devices.contains(technique.id()) && fits(technique, found) && fits(technique, person, found)
                                ? weight(technique, found.course())
                                : 0);
    }

    private double weight(Technique technique, Segment.Course course) {
        return course == Segment.Course.STRAIGHT
                ? 1
                : winding.number(technique.family().word());
    }

    private boolean fits(Technique technique, MadeLeg.Found found) {
        boolean byCatheter = technique.family() == Family.HEAT
                || technique.family() == Family.MECHANOCHEMICAL
                || technique.family() == Family.ADHESIVE;
        if (!byCatheter) {
            return true;
        }
        double straightCm = found.straightCm() - reserveCm;
        return found.course() != Segment.Course.VERY_WINDING
                && found.thrombus() == Segment.Thrombus.NONE
                && straightCm >= Math.max(leastStraightCm, elementCm.getOrDefault(technique.id(), 0.0))
                && !(found.vein() == Segment.Vein.RECURRENT_CHANNEL && found.course() != Segment.Course.STRAIGHT);
    }

    private boolean fits(Technique technique, Person person, MadeLeg.Found found) {
        return switch (technique.family()) {
            case HEAT ->
                !person.allergicTo("amide-anaesthetic")
                        && !(byCurrent(technique) && (person.is("pacemaker") || person.is("defibrillator")));
            case FOAM -> !person.is("right-to-left-shunt-symptomatic") && !allergicTo(technique, person);
            case MECHANOCHEMICAL ->
                !person.allergicTo("polidocanol")
                        && found.lengthCm() * wireMgPerCm <= wireMostMgPerKg * person.weightKg();
            case ADHESIVE -> !person.allergicTo("cyanoacrylate");
            case FOCUSED_ULTRASOUND -> !person.is("metal-in-beam-path") && !person.allergicTo("amide-anaesthetic");
        };
    }

    private static boolean byCurrent(Technique technique) {
        return technique.id().startsWith("rf-") || technique.id().equals("microwave");
    }

    private static boolean allergicTo(Technique technique, Person person) {
        return technique.drugs().stream().anyMatch(person::allergicTo);
    }
}
