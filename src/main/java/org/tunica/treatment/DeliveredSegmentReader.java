package org.tunica.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.session.Position;

/** Reads what was delivered to one segment. */
final class DeliveredSegmentReader {
    private static final String SEGMENT = "delivered.segments.";

    private final Knowledge knowledge;
    private final RangedNumbers numbers;
    private final DeliveredLimits limits;

    DeliveredSegmentReader(Knowledge knowledge, RangedNumbers numbers) {
        this.knowledge = knowledge;
        this.numbers = numbers;
        this.limits = DeliveredLimits.of(knowledge);
    }

    double agreement() {
        return limits.agreementShare();
    }

    DeliveredSegment read(FieldReader reader) {
        DeliveredSegment read = new DeliveredSegment(
                DeliveredReader.reference(reader, "ref"),
                reader.text("notDone"),
                reader.id("technique", knowledge.techniqueIds()),
                reader.word("position", Position.class),
                access(DeliveredReader.part(reader, "access")),
                number(reader, "tipToJunctionCm"),
                number(reader, "treatedLengthCm"),
                reader.object("heat").map(this::heat),
                reader.objects("stretches").map(this::stretches),
                reader.object("tumescent").map(this::tumescent),
                reader.object("sclerosant").map(this::sclerosant),
                reader.object("adhesive").map(this::adhesive),
                whole(reader, "lesions"),
                whole(reader, "phlebectomyIncisions"),
                reader.words("incidents", DeliveredSegment.Incident.class),
                reader.text("incidentNote"),
                duplex(DeliveredReader.part(reader, "closingDuplex")));
        reader.done();
        new DeliveredChecks(knowledge, limits, read, reader).check();
        return read;
    }

    private static DeliveredSegment.Access access(FieldReader reader) {
        DeliveredSegment.Access read = new DeliveredSegment.Access(
                reader.word("vein", Segment.Vein.class), reader.word("level", Segment.Level.class));
        reader.done();
        return read;
    }

    private DeliveredHeat heat(FieldReader reader) {
        DeliveredHeat read = new DeliveredHeat(
                ofHeat(reader, "lengthCm"),
                ofHeat(reader, "powerW"),
                ofHeat(reader, "pullbackSecondsPerCm"),
                ofHeat(reader, "pullbackMmPerS"),
                ofHeat(reader, "leedJPerCm"),
                ofHeat(reader, "totalEnergyJ"),
                ofHeat(reader, "heatingSeconds"),
                numbers.whole(reader, "cycles", SEGMENT + "heat.cycles"),
                ofHeat(reader, "pulsesPerCm"),
                ofHeat(reader, "elementTemperatureC"));
        reader.done();
        return read;
    }

    private List<DeliveredHeat> stretches(List<FieldReader> readers) {
        List<DeliveredHeat> read = new ArrayList<>();
        readers.forEach(reader -> read.add(heat(reader)));
        return read;
    }

    private DeliveredSegment.Tumescent tumescent(FieldReader reader) {
        DeliveredSegment.Tumescent read = new DeliveredSegment.Tumescent(
                numbers.number(reader, "volumeMl", SEGMENT + "tumescent.volumeMl"),
                numbers.number(reader, "lidocainePercent", SEGMENT + "tumescent.lidocainePercent"),
                reader.flag("adrenaline"),
                reader.flag("chilled"));
        reader.done();
        return read;
    }

    private DeliveredSegment.Sclerosant sclerosant(FieldReader reader) {
        DeliveredSegment.Sclerosant read = new DeliveredSegment.Sclerosant(
                reader.word("drug", Room.SclerosantDrug.class),
                ofSclerosant(reader, "percent"),
                ofSclerosant(reader, "liquidMl"),
                reader.word("gas", Room.FoamGas.class),
                ofSclerosant(reader, "gasParts"),
                ofSclerosant(reader, "foamMl"));
        reader.done();
        return read;
    }

    private DeliveredSegment.Adhesive adhesive(FieldReader reader) {
        DeliveredSegment.Adhesive read = new DeliveredSegment.Adhesive(
                numbers.whole(reader, "aliquots", SEGMENT + "adhesive.aliquots"),
                numbers.number(reader, "volumeMl", SEGMENT + "adhesive.volumeMl"));
        reader.done();
        return read;
    }

    private DeliveredSegment.ClosingDuplex duplex(FieldReader reader) {
        DeliveredSegment.ClosingDuplex read = new DeliveredSegment.ClosingDuplex(
                numbers.number(reader, "closedLengthCm", SEGMENT + "closingDuplex.closedLengthCm"),
                reader.flag("deepVeinOpen"));
        reader.done();
        return read;
    }

    private OptionalDouble number(FieldReader reader, String field) {
        return numbers.number(reader, field, SEGMENT + field);
    }

    private OptionalInt whole(FieldReader reader, String field) {
        return numbers.whole(reader, field, SEGMENT + field);
    }

    private OptionalDouble ofHeat(FieldReader reader, String field) {
        return numbers.number(reader, field, SEGMENT + "heat." + field);
    }

    private OptionalDouble ofSclerosant(FieldReader reader, String field) {
        return numbers.number(reader, field, SEGMENT + "sclerosant." + field);
    }
}
