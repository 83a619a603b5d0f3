package org.tunica.casefile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads a case file field by field and lists every fault it meets. */
final class CaseReader {
    private static final Pattern REFERENCE = Pattern.compile(CaseFile.REFERENCE);

    private final KnownWords known;
    private final Faults faults;
    private final Set<String> refs = new HashSet<>();
    private final Set<Limb.Side> sides = new HashSet<>();

    CaseReader(KnownWords known, Faults faults) {
        this.known = known;
        this.faults = faults;
    }

    CaseFile read(String what, byte[] bytes) {
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        CaseFile read = read(root);
        faults.throwIfAny(what);
        return read;
    }

    CaseFile read(FieldReader root) {
        format(root);
        String caseRef = reference(root, "caseRef");
        Patient patient = patient(part(root, "patient"));
        Room room = room(part(root, "room"));
        Optional<List<Criterion>> importance = root.wordsInOrder("importance", Criterion.class);
        List<Limb> limbs = limbs(root);
        root.done();
        CaseChecks.check(root, patient, limbs);
        return new CaseFile(CaseFile.FORMAT, caseRef, patient, room, importance, limbs);
    }

    private void format(FieldReader root) {
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(CaseFile.FORMAT)) {
            root.fault("format", "must be \"" + CaseFile.FORMAT + "\", is \"" + FieldReader.shorten(format) + "\"");
        }
    }

    private String reference(FieldReader object, String field) {
        String reference = object.requiredText(field);
        if (!reference.isEmpty() && !REFERENCE.matcher(reference).matches()) {
            object.fault(
                    field,
                    "must be 1 to 64 letters, digits, dots, hyphens or underscores, starting with a letter or digit");
        }
        return reference;
    }

    private Patient patient(FieldReader patient) {
        FieldReader canLie = part(patient, "canLie");
        Patient read = new Patient(
                number(patient, "ageYears", "patient.ageYears"),
                patient.word("sex", Patient.Sex.class),
                number(patient, "weightKg", "patient.weightKg"),
                number(patient, "heightCm", "patient.heightCm"),
                patient.flag("pregnant"),
                patient.flag("breastfeeding"),
                patient.word("anticoagulation", Patient.Anticoagulation.class),
                patient.word("mobility", Patient.Mobility.class),
                patient.flag("needleAversion"),
                new Patient.CanLie(canLie.flag("headDown"), canLie.flag("flat"), canLie.flag("prone")),
                patient.ids("allergies", known.allergyIds()),
                patient.ids("conditions", known.conditionIds()),
                patient.words("preferences", Patient.Preference.class));
        canLie.done();
        patient.done();
        possible(read, patient);
        return read;
    }

    /** A rule that spares men the question of pregnancy must never meet a pregnant patient entered as male. */
    private static void possible(Patient read, FieldReader patient) {
        boolean male = read.sex().equals(Optional.of(Patient.Sex.MALE));
        for (String field : List.of("pregnant", "breastfeeding")) {
            Optional<Boolean> holds = field.equals("pregnant") ? read.pregnant() : read.breastfeeding();
            if (male && holds.orElse(false)) {
                patient.fault(
                        field,
                        "does not go with sex male; give the sex as female or other where pregnancy is possible");
            }
        }
    }

    Room room(FieldReader room) {
        Room read = new Room(
                room.ids("devices", known.techniqueIds()),
                room.objects("sclerosants").map(this::sclerosants),
                room.words("foamGas", Room.FoamGas.class),
                room.object("tumescent").map(this::tumescent),
                room.flag("tiltTable"),
                number(room, "freeMinutes", "room.freeMinutes"),
                room.object("costClasses").map(classes -> new CostClassReader(classes, known.techniqueIds()).read()));
        room.done();
        return read;
    }

    private List<Room.Sclerosant> sclerosants(List<FieldReader> readers) {
        List<Room.Sclerosant> read = new ArrayList<>();
        for (FieldReader reader : readers) {
            Room.SclerosantDrug drug = reader.requiredWord("drug", Room.SclerosantDrug.class);
            OptionalDouble percent = number(reader, "percent", "room.sclerosants.percent");
            reader.required("percent", percent.isPresent() ? Optional.of(percent) : Optional.empty());
            reader.done();
            read.add(new Room.Sclerosant(drug, percent.orElse(1)));
        }
        return read;
    }

    private Room.Tumescent tumescent(FieldReader reader) {
        Room.Tumescent read = new Room.Tumescent(
                number(reader, "lidocainePercent", "room.tumescent.lidocainePercent"),
                reader.flag("adrenaline"),
                reader.flag("chilled"));
        reader.done();
        return read;
    }

    private List<Limb> limbs(FieldReader root) {
        List<Limb> read = new ArrayList<>();
        for (FieldReader reader : list(root, "limbs")) {
            read.add(limb(reader));
        }
        return read;
    }

    private Limb.Side side(FieldReader limb) {
        Optional<Limb.Side> side = limb.required("side", limb.word("side", Limb.Side.class));
        if (side.isPresent() && !sides.add(side.get())) {
            limb.fault("side", "the " + side.get().word() + " side stands twice; put its segments together");
        }
        return side.orElse(Limb.Side.LEFT);
    }

    private Limb limb(FieldReader limb) {
        Limb.Side side = side(limb);
        Optional<Limb.CeapClass> ceapClass = limb.word("ceapClass", Limb.CeapClass.class);
        OptionalDouble index = number(limb, "ankleBrachialIndex", "limbs.ankleBrachialIndex");
        OptionalDouble anklePressure = number(limb, "anklePressureMmHg", "limbs.anklePressureMmHg");
        OptionalDouble toePressure = number(limb, "toePressureMmHg", "limbs.toePressureMmHg");
        Optional<Limb.DeepVeins> deepVeins = limb.word("deepVeins", Limb.DeepVeins.class);
        Optional<Boolean> outflow = limb.flag("trunkIsMainOutflow");
        List<Segment> segments = segments(limb);
        limb.done();
        return new Limb(side, ceapClass, index, anklePressure, toePressure, deepVeins, outflow, segments);
    }

    private List<Segment> segments(FieldReader limb) {
        List<Segment> segments = new ArrayList<>();
        List<FieldReader> readers = list(limb, "segments");
        if (readers.size() > CaseFile.MOST_SEGMENTS) {
            limb.fault(
                    "segments",
                    "holds " + readers.size() + " segments; at most " + CaseFile.MOST_SEGMENTS + " are read");
        } else {
            readers.forEach(reader -> segments.add(segment(reader)));
        }
        return segments;
    }

    private Segment segment(FieldReader segment) {
        String ref = reference(segment, "ref");
        if (!ref.isEmpty() && !refs.add(ref)) {
            segment.fault("ref", "\"" + ref + "\" stands twice in the case");
        }
        Segment read = new Segment(
                ref,
                segment.requiredWord("vein", Segment.Vein.class),
                segment.requiredWord("level", Segment.Level.class),
                ofSegment(segment, "lengthCm"),
                ofSegment(segment, "straightCm"),
                ofSegment(segment, "lumenDiameterMm"),
                ofSegment(segment, "lumenDiameterSdMm"),
                ofSegment(segment, "wallThicknessMm"),
                ofSegment(segment, "wallThicknessSdMm"),
                measured(part(segment, "measured")),
                ofSegment(segment, "depthToSkinMm"),
                ofSegment(segment, "depthToSkinSdMm"),
                nerve(part(segment, "nerve")),
                ofSegment(segment, "refluxSeconds"),
                segment.word("course", Segment.Course.class),
                segment.flag("withinFascia"),
                segment.word("thrombus", Segment.Thrombus.class),
                segment.word("earlierTreatment", Segment.EarlierTreatment.class),
                ofSegment(segment, "topToDeepJunctionCm"),
                segment.id("chosen", known.techniqueIds()));
        segment.done();
        SegmentChecks.check(read, segment);
        return read;
    }

    private Segment.Measured measured(FieldReader reader) {
        Segment.Measured read = new Segment.Measured(
                reader.word("posture", Segment.Measured.Posture.class),
                reader.flag("inSpasm"),
                number(reader, "relaxedLumenDiameterMm", "limbs.segments.measured.relaxedLumenDiameterMm"));
        reader.done();
        return read;
    }

    private Segment.Nerve nerve(FieldReader reader) {
        Segment.Nerve read = new Segment.Nerve(
                reader.word("name", Segment.Nerve.Name.class),
                number(reader, "gapMm", "limbs.segments.nerve.gapMm"),
                number(reader, "gapSdMm", "limbs.segments.nerve.gapSdMm"));
        reader.done();
        return read;
    }

    private OptionalDouble ofSegment(FieldReader segment, String field) {
        return number(segment, field, "limbs.segments." + field);
    }

    private OptionalDouble number(FieldReader reader, String field, String rangePath) {
        PlausibleRange range = known.plausibleRange(rangePath)
                .orElseThrow(() -> new IllegalArgumentException("no plausible range for " + rangePath));
        OptionalDouble number = reader.number(field);
        if (number.isPresent() && !range.holds(number.getAsDouble())) {
            reader.fault(field, outside(number.getAsDouble(), range));
        }
        return number;
    }

    private static String outside(double number, PlausibleRange range) {
        return "must be " + plain(range.min()) + " to " + plain(range.max()) + UcumWords.behind(range.unit()) + ", is "
                + plain(number);
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? Long.toString((long) number)
                : Double.toString(number);
    }

    /** An absent part reads like an empty object: everything in it is unknown. */
    private FieldReader part(FieldReader object, String field) {
        return object.object(field).orElseGet(() -> object.emptyPart(field));
    }

    private List<FieldReader> list(FieldReader object, String field) {
        List<FieldReader> readers =
                object.required(field, object.objects(field)).orElse(List.of());
        if (object.isList(field) && readers.isEmpty()) {
            object.fault(field, "must hold at least one entry");
        }
        return readers;
    }
}
