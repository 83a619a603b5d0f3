package org.tunica.invented;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.session.Position;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;

/** Makes up what one segment was given. */
final class SegmentMaker {
    private static final double MM_PER_CM = 10;

    private final HeatMaker heat;
    private final DrugMaker drugs;
    private final Fates fates;
    private final Map<Family, Shares<DeliveredSegment.Incident>> incidents = new EnumMap<>(Family.class);
    private final Distribution phlebectomies;
    private final Distribution open;
    private final double adhesiveTipCm;
    private final double lesionSpacingMm;
    private final double polidocanolMgPerKg;
    private final double stumpNeedsCm;
    private final double partNeedsCm;

    SegmentMaker(Knowledge knowledge, Fates fates) {
        this.heat = new HeatMaker(knowledge);
        this.drugs = new DrugMaker(knowledge);
        this.fates = fates;
        for (Family family : Family.values()) {
            incidents.put(
                    family,
                    Shares.of(
                            knowledge.invented("invented.incident." + family.word()),
                            word -> Choice.word(word, DeliveredSegment.Incident.class)));
        }
        this.phlebectomies = knowledge.invented("invented.phlebectomies");
        this.open = knowledge.invented("invented.open");
        this.adhesiveTipCm = knowledge.value("adhesive.tip.start");
        this.lesionSpacingMm = knowledge
                .technique("focused-ultrasound")
                .quantity("lesionSpacingMm")
                .value();
        this.polidocanolMgPerKg = knowledge.value("dose.polidocanol.day");
        this.stumpNeedsCm = 2 * knowledge.value("follow-up.adhesive.open-stump.max");
        this.partNeedsCm = 2 * knowledge.value("follow-up.mechanochemical.open-part.max");
    }

    Given of(Draw draw, Limb.Side side, MadeSegment made, Person person, Room room) {
        Technique technique = made.technique().orElseThrow();
        double failsOnDay = fates.failsOnDay(draw, made);
        OptionalDouble tipCm = tip(draw, technique, made);
        double lengthCm = treatedCm(made, technique, tipCm.orElse(0));
        DeliveredSegment delivered = new DeliveredSegment(
                made.segment().ref(),
                Optional.empty(),
                Optional.of(technique.id()),
                Optional.of(position(made, person)),
                access(made, technique),
                tipCm,
                OptionalDouble.of(lengthCm),
                whole(draw, made, technique, lengthCm),
                stretches(draw, made, technique, lengthCm),
                tumescent(draw, technique, lengthCm, room),
                sclerosant(draw, made, technique, lengthCm, person, room),
                technique.family() == Family.ADHESIVE
                        ? Optional.of(drugs.adhesive(technique, lengthCm))
                        : Optional.empty(),
                technique.family() == Family.FOCUSED_ULTRASOUND
                        ? OptionalInt.of((int) Math.ceil(lengthCm * MM_PER_CM / lesionSpacingMm))
                        : OptionalInt.empty(),
                cuts(draw, technique),
                Optional.of(incidents.get(technique.family()).from(draw)),
                Optional.empty(),
                duplex(draw, lengthCm, failsOnDay));
        return new Given(side, made, delivered, lengthCm, closure(technique, lengthCm), failsOnDay);
    }

    /** A short segment would count as closed by a stump however much of it is open. */
    private ClosureDefinition closure(Technique technique, double lengthCm) {
        boolean wire = technique.family() == Family.MECHANOCHEMICAL;
        if (lengthCm < (wire ? partNeedsCm : stumpNeedsCm)) {
            return ClosureDefinition.MECHANOCHEMICAL_OCCLUDED_SHARE;
        }
        return wire ? ClosureDefinition.MECHANOCHEMICAL_OPEN_PART : ClosureDefinition.ADHESIVE_OPEN_STUMP;
    }

    private OptionalDouble tip(Draw draw, Technique technique, MadeSegment made) {
        if (made.segment().topToDeepJunctionCm().isEmpty()) {
            return OptionalDouble.empty();
        }
        if (technique.family() == Family.ADHESIVE) {
            return OptionalDouble.of(adhesiveTipCm);
        }
        boolean named =
                technique.family() == Family.HEAT && technique.settings().containsKey("tipToJunctionCm");
        return named
                ? OptionalDouble.of(Made.rounded(HeatMaker.between(draw, technique, "tipToJunctionCm"), 1))
                : OptionalDouble.empty();
    }

    private static double treatedCm(MadeSegment made, Technique technique, double tipCm) {
        boolean free = technique.family() == Family.FOAM || technique.family() == Family.FOCUSED_ULTRASOUND;
        boolean straight = made.segment().course().equals(Optional.of(Segment.Course.STRAIGHT));
        return Made.rounded((free || straight ? made.lengthCm() : made.straightCm()) - tipCm, 1);
    }

    private static Position position(MadeSegment made, Person person) {
        boolean behind = made.segment().vein() == Segment.Vein.SMALL_SAPHENOUS
                || made.segment().level() == Segment.Level.POPLITEAL;
        if (behind && person.patient().canLie().prone().orElse(false)) {
            return Position.PRONE;
        }
        return person.patient().canLie().headDown().orElse(false) ? Position.SUPINE_HEAD_DOWN : Position.SUPINE;
    }

    private static DeliveredSegment.Access access(MadeSegment made, Technique technique) {
        if (technique.family() == Family.FOCUSED_ULTRASOUND) {
            return new DeliveredSegment.Access(Optional.empty(), Optional.empty());
        }
        Segment.Level level = switch (made.segment().level()) {
            case GROIN -> Segment.Level.THIGH;
            case THIGH ->
                made.segment().vein() == Segment.Vein.GREAT_SAPHENOUS ? Segment.Level.KNEE : Segment.Level.THIGH;
            case KNEE -> Segment.Level.UPPER_CALF;
            case POPLITEAL, UPPER_CALF -> Segment.Level.MID_CALF;
            case MID_CALF, LOWER_CALF, ANKLE -> Segment.Level.LOWER_CALF;
        };
        return new DeliveredSegment.Access(Optional.of(made.segment().vein()), Optional.of(level));
    }

    private Optional<DeliveredHeat> whole(Draw draw, MadeSegment made, Technique technique, double lengthCm) {
        return technique.family() == Family.HEAT && !technique.settings().containsKey("cyclesPerStretch")
                ? Optional.of(heat.whole(draw, technique, lengthCm, made.lumenDiameterMm()))
                : Optional.empty();
    }

    private Optional<List<DeliveredHeat>> stretches(Draw draw, MadeSegment made, Technique technique, double lengthCm) {
        return Optional.of(heat.stretches(draw, technique, lengthCm, made.lumenDiameterMm()))
                .filter(list -> !list.isEmpty());
    }

    private Optional<DeliveredSegment.Tumescent> tumescent(Draw draw, Technique technique, double lengthCm, Room room) {
        if (technique.family() != Family.HEAT) {
            return Optional.empty();
        }
        Room.Tumescent mix = room.tumescent().orElseThrow();
        double ml = Made.rounded(lengthCm * HeatMaker.between(draw, technique, "tumescentMlPerCm"), 0);
        return Optional.of(new DeliveredSegment.Tumescent(
                OptionalDouble.of(ml), mix.lidocainePercent(), mix.adrenaline(), mix.chilled()));
    }

    private Optional<DeliveredSegment.Sclerosant> sclerosant(
            Draw draw, MadeSegment made, Technique technique, double lengthCm, Person person, Room room) {
        return switch (technique.family()) {
            case FOAM ->
                Optional.of(drugs.foam(
                        draw,
                        technique,
                        made,
                        room.foamGas().orElseThrow().iterator().next()));
            case MECHANOCHEMICAL ->
                Optional.of(drugs.behindTheWire(draw, technique, lengthCm, polidocanolMgPerKg * person.weightKg()));
            case HEAT, ADHESIVE, FOCUSED_ULTRASOUND -> Optional.empty();
        };
    }

    private OptionalInt cuts(Draw draw, Technique technique) {
        return technique.family() == Family.HEAT && draw.happens(phlebectomies.number("share"))
                ? OptionalInt.of(1 + draw.below((int) phlebectomies.number("most")))
                : OptionalInt.empty();
    }

    /** A vein that fails within the day was never closed all along. */
    private DeliveredSegment.ClosingDuplex duplex(Draw draw, double lengthCm, double failsOnDay) {
        double openShare = draw.between(open.number("low"), open.number("high"));
        double closedCm = failsOnDay < 1 ? Made.rounded(lengthCm * (1 - openShare), 1) : lengthCm;
        return new DeliveredSegment.ClosingDuplex(OptionalDouble.of(closedCm), Optional.of(true));
    }
}
