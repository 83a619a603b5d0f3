package org.tunica.treatment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.Limb;

/** Reads a follow-up field by field and lists every fault it meets. */
final class FollowUpReader {
    private static final Pattern REFERENCE = Pattern.compile(CaseFile.REFERENCE);
    private static final String LIMBS = "followup.limbs.";

    private final Faults faults;
    private final RangedNumbers numbers;
    private final Set<Limb.Side> sides = new HashSet<>();
    private final Set<String> refs = new HashSet<>();

    FollowUpReader(KnownWords known, Faults faults) {
        this.faults = faults;
        this.numbers = new RangedNumbers(known);
    }

    FollowUp read(String what, byte[] bytes) {
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        FollowUp read = read(root);
        faults.throwIfAny(what);
        return read;
    }

    FollowUp read(FieldReader root) {
        format(root);
        String caseRef = reference(root, "caseRef");
        List<FollowUp.FollowedLimb> limbs = new ArrayList<>();
        list(root, "limbs").forEach(reader -> limbs.add(limb(reader)));
        root.done();
        return new FollowUp(caseRef, limbs);
    }

    private static void format(FieldReader root) {
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(FollowUp.FORMAT)) {
            root.fault("format", "must be \"" + FollowUp.FORMAT + "\"");
        }
    }

    private static String reference(FieldReader reader, String field) {
        String reference = reader.requiredText(field);
        if (!reference.isEmpty() && !REFERENCE.matcher(reference).matches()) {
            reader.fault(
                    field,
                    "must be 1 to 64 letters, digits, dots, hyphens or underscores, starting with a letter or digit");
        }
        return reference;
    }

    private FollowUp.FollowedLimb limb(FieldReader limb) {
        Limb.Side side = limb.requiredWord("side", Limb.Side.class);
        if (limb.has("side") && !sides.add(side)) {
            limb.fault("side", "the " + side.word() + " side stands twice; put its segments together");
        }
        Optional<Ceap> ceap = ceap(limb, "ceapBefore");
        Optional<SeverityGrades> vcss = grades(limb, "vcssBefore");
        Map<String, Double> lengths = new LinkedHashMap<>();
        List<FollowUp.TreatedLength> treated = new ArrayList<>();
        list(limb, "treated").forEach(reader -> treated.add(treated(reader, lengths)));
        List<FollowUp.Visit> visits = visits(limb, lengths);
        limb.done();
        return new FollowUp.FollowedLimb(side, ceap, vcss, treated, visits);
    }

    private FollowUp.TreatedLength treated(FieldReader reader, Map<String, Double> lengths) {
        String ref = reference(reader, "ref");
        if (!ref.isEmpty() && !refs.add(ref)) {
            reader.fault("ref", "\"" + ref + "\" stands twice in the follow-up");
        }
        double lengthCm = numbers.required(reader, "treatedLengthCm", LIMBS + "treated.treatedLengthCm");
        lengths.put(ref, lengthCm);
        FollowUp.TreatedLength read =
                new FollowUp.TreatedLength(ref, lengthCm, reader.requiredWord("closure", ClosureDefinition.class));
        reader.done();
        return read;
    }

    private List<FollowUp.Visit> visits(FieldReader limb, Map<String, Double> lengths) {
        List<FollowUp.Visit> visits = new ArrayList<>();
        List<FieldReader> readers =
                limb.required("visits", limb.objects("visits")).orElse(List.of());
        if (readers.size() > FollowUp.MOST_VISITS) {
            limb.fault("visits", "holds " + readers.size() + " visits; at most " + FollowUp.MOST_VISITS + " are read");
            return visits;
        }
        int lastDay = -1;
        for (FieldReader reader : readers) {
            FollowUp.Visit visit = visit(reader, lengths);
            if (reader.has("daysAfter") && visit.daysAfter() <= lastDay) {
                reader.fault("daysAfter", "must be later than the visit before it, on day " + lastDay);
            }
            lastDay = Math.max(lastDay, visit.daysAfter());
            visits.add(visit);
        }
        return visits;
    }

    private FollowUp.Visit visit(FieldReader reader, Map<String, Double> lengths) {
        OptionalInt daysAfter = numbers.whole(reader, "daysAfter", LIMBS + "visits.daysAfter");
        reader.required("daysAfter", daysAfter.isPresent() ? Optional.of(daysAfter) : Optional.empty());
        OptionalInt pain = numbers.whole(reader, "painOfTen", LIMBS + "visits.painOfTen");
        Optional<Ceap> ceap = ceap(reader, "ceap");
        Optional<SeverityGrades> vcss = grades(reader, "vcss");
        Set<String> named = new HashSet<>();
        Optional<List<FollowUp.Seen>> seen = reader.objects("segments")
                .map(parts ->
                        parts.stream().map(part -> seen(part, lengths, named)).toList());
        reader.done();
        return new FollowUp.Visit(daysAfter.orElse(0), pain, ceap, vcss, seen);
    }

    private FollowUp.Seen seen(FieldReader reader, Map<String, Double> lengths, Set<String> named) {
        String ref = reader.required("ref", reader.id("ref", lengths.keySet())).orElse("");
        if (!ref.isEmpty() && !named.add(ref)) {
            reader.fault("ref", "\"" + ref + "\" stands twice in the visit");
        }
        FollowUp.Seen seen = new FollowUp.Seen(
                ref,
                ofSegment(reader, "openLengthCm"),
                ofSegment(reader, "refluxSeconds"),
                reader.word("clot", FollowUp.Clot.class),
                ofSegment(reader, "deepLumenPercent"),
                reader.objects("complications").map(this::complications),
                reader.word("again", FollowUp.Again.class));
        reader.done();
        SeenChecks.check(seen, lengths.getOrDefault(ref, Double.NaN), reader);
        return seen;
    }

    private OptionalDouble ofSegment(FieldReader reader, String field) {
        return numbers.number(reader, field, LIMBS + "visits.segments." + field);
    }

    private List<Complication> complications(List<FieldReader> readers) {
        List<Complication> read = new ArrayList<>();
        for (FieldReader reader : readers) {
            Complication one = new Complication(
                    reader.requiredWord("kind", Complication.Kind.class),
                    reader.word("grade", Complication.Grade.class),
                    reader.word("clavienDindo", Complication.ClavienDindo.class));
            if (one.contradictory()) {
                reader.fault("clavienDindo", "one scale says death and the other does not");
            }
            reader.done();
            read.add(one);
        }
        return read;
    }

    private Optional<Ceap> ceap(FieldReader reader, String field) {
        return reader.text(field).flatMap(text -> Ceap.read(reader.path() + "." + field, text, faults));
    }

    private Optional<SeverityGrades> grades(FieldReader reader, String field) {
        return reader.object(field).map(part -> {
            SeverityGrades grades = new SeverityGrades(
                    grade(part, "pain"),
                    grade(part, "varicoseVeins"),
                    grade(part, "venousOedema"),
                    grade(part, "pigmentation"),
                    grade(part, "inflammation"),
                    grade(part, "induration"),
                    grade(part, "numberOfActiveUlcers"),
                    grade(part, "longestUlcerDuration"),
                    grade(part, "largestUlcerSize"),
                    grade(part, "compressionUse"));
            part.done();
            return grades;
        });
    }

    private OptionalInt grade(FieldReader part, String item) {
        return numbers.whole(part, item, "followup.vcss");
    }

    private static List<FieldReader> list(FieldReader object, String field) {
        List<FieldReader> readers =
                object.required(field, object.objects(field)).orElse(List.of());
        if (object.isList(field) && readers.isEmpty()) {
            object.fault(field, "must hold at least one entry");
        }
        return readers;
    }
}
