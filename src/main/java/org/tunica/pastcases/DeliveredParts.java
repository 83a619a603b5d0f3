package org.tunica.pastcases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;

/** What of a record of delivery may stand in a past case, field by field; what is not named here does not get in. */
final class DeliveredParts {
    private static final OptionalDouble DROPPED = OptionalDouble.empty();

    private final Rounding rounding;
    private final References references;

    DeliveredParts(Rounding rounding, References references) {
        this.rounding = rounding;
        this.references = references;
    }

    /** The sessions in which anything was done; what was not done is told in the notes. */
    List<DeliveredSession> of(List<DeliveredSession> sessions, String id) {
        return sessions.stream()
                .map(session -> session(session, id))
                .filter(session -> !session.segments().isEmpty())
                .toList();
    }

    private DeliveredSession session(DeliveredSession session, String id) {
        return new DeliveredSession(
                DeliveredSession.FORMAT,
                id,
                session.session(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                session.severityPoints(),
                Optional.empty(),
                Optional.empty(),
                rounding.of(Step.DOSE, session.otherLidocaineMg()),
                session.otherAdrenaline(),
                new DeliveredSession.Totals(DROPPED, DROPPED, DROPPED, DROPPED, DROPPED, DROPPED),
                session.segments().stream()
                        .filter(segment -> segment.notDone().isEmpty())
                        .map(this::segment)
                        .toList(),
                new DeliveredSession.Aftercare(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private DeliveredSegment segment(DeliveredSegment segment) {
        return new DeliveredSegment(
                references.of("$.delivered.segments", segment.ref()),
                Optional.empty(),
                segment.technique(),
                segment.position(),
                new DeliveredSegment.Access(
                        segment.access().vein(), segment.access().level()),
                rounding.of(Step.LENGTH, segment.tipToJunctionCm()),
                rounding.of(Step.LENGTH, segment.treatedLengthCm()),
                segment.heat().map(this::heat),
                segment.stretches()
                        .map(stretches -> stretches.stream().map(this::heat).toList()),
                segment.tumescent().map(this::tumescent),
                segment.sclerosant().map(this::sclerosant),
                segment.adhesive()
                        .map(glue -> new DeliveredSegment.Adhesive(
                                glue.aliquots(), rounding.of(Step.VOLUME, glue.volumeMl()))),
                segment.lesions(),
                segment.phlebectomyIncisions(),
                segment.incidents(),
                Optional.empty(),
                new DeliveredSegment.ClosingDuplex(
                        rounding.of(Step.LENGTH, segment.closingDuplex().closedLengthCm()),
                        segment.closingDuplex().deepVeinOpen()));
    }

    private DeliveredHeat heat(DeliveredHeat heat) {
        return new DeliveredHeat(
                rounding.of(Step.LENGTH, heat.lengthCm()),
                rounding.of(Step.POWER, heat.powerW()),
                rounding.of(Step.PULLBACK, heat.pullbackSecondsPerCm()),
                rounding.of(Step.SPEED, heat.pullbackMmPerS()),
                rounding.of(Step.LINEAR_ENERGY, heat.leedJPerCm()),
                rounding.of(Step.ENERGY, heat.totalEnergyJ()),
                rounding.of(Step.TIME, heat.heatingSeconds()),
                heat.cycles(),
                rounding.of(Step.PULSES, heat.pulsesPerCm()),
                rounding.of(Step.TEMPERATURE, heat.elementTemperatureC()));
    }

    private DeliveredSegment.Tumescent tumescent(DeliveredSegment.Tumescent fluid) {
        return new DeliveredSegment.Tumescent(
                rounding.of(Step.FLUID, fluid.volumeMl()),
                rounding.of(Step.STRENGTH, fluid.lidocainePercent()),
                fluid.adrenaline(),
                fluid.chilled());
    }

    private DeliveredSegment.Sclerosant sclerosant(DeliveredSegment.Sclerosant drug) {
        return new DeliveredSegment.Sclerosant(
                drug.drug(),
                rounding.of(Step.STRENGTH, drug.percent()),
                rounding.of(Step.VOLUME, drug.liquidMl()),
                drug.gas(),
                rounding.of(Step.STRENGTH, drug.gasParts()),
                rounding.of(Step.VOLUME, drug.foamMl()));
    }
}
