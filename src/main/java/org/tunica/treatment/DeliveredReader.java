package org.tunica.treatment;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.knowledge.Knowledge;

/** Reads a record of a delivery field by field and lists every fault it meets. */
final class DeliveredReader {
    private static final Pattern REFERENCE = Pattern.compile(CaseFile.REFERENCE);
    private static final Pattern INITIALS = Pattern.compile(DeliveredSession.INITIALS);
    private static final Pattern DATE = Pattern.compile(DeliveredSession.DATE);

    private final RangedNumbers numbers;
    private final DeliveredSegmentReader segments;

    DeliveredReader(Knowledge knowledge) {
        this.numbers = new RangedNumbers(knowledge);
        this.segments = new DeliveredSegmentReader(knowledge, numbers);
    }

    DeliveredSession read(String what, byte[] bytes) {
        Faults faults = new Faults();
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        DeliveredSession read = read(root);
        faults.throwIfAny(what);
        return read;
    }

    DeliveredSession read(FieldReader root) {
        format(root);
        DeliveredSession read = session(root);
        root.done();
        TotalChecks.check(read, root, segments.agreement());
        return read;
    }

    private static void format(FieldReader root) {
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(DeliveredSession.FORMAT)) {
            root.fault("format", "must be \"" + DeliveredSession.FORMAT + "\"");
        }
    }

    private DeliveredSession session(FieldReader root) {
        return new DeliveredSession(
                DeliveredSession.FORMAT,
                reference(root, "caseRef"),
                numbers.whole(root, "session", "delivered.session"),
                date(root),
                root.objects("people").map(DeliveredReader::people),
                root.text("indication"),
                number(root, "severityPoints"),
                root.flag("consent"),
                root.flag("timeOut"),
                number(root, "otherLidocaineMg"),
                root.flag("otherAdrenaline"),
                totals(part(root, "totals")),
                segments(root),
                aftercare(part(root, "aftercare")));
    }

    static String reference(FieldReader reader, String field) {
        String reference = reader.requiredText(field);
        if (!reference.isEmpty() && !REFERENCE.matcher(reference).matches()) {
            reader.fault(
                    field,
                    "must be 1 to 64 letters, digits, dots, hyphens or underscores, starting with a letter or digit");
        }
        return reference;
    }

    private static Optional<String> date(FieldReader root) {
        Optional<String> date = root.text("date");
        date.ifPresent(written -> {
            if (!DATE.matcher(written).matches()) {
                root.fault("date", "must be a day such as 2026-03-02");
            } else if (!isDay(written)) {
                root.fault("date", "is no day of the calendar");
            }
        });
        return date;
    }

    private static boolean isDay(String written) {
        try {
            LocalDate.parse(written);
            return true;
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static List<DeliveredSession.Person> people(List<FieldReader> readers) {
        List<DeliveredSession.Person> read = new ArrayList<>();
        for (FieldReader reader : readers) {
            String initials = reader.requiredText("initials");
            if (!initials.isEmpty() && !INITIALS.matcher(initials).matches()) {
                reader.fault("initials", "must be 1 to 4 capital letters; no name");
            }
            read.add(new DeliveredSession.Person(reader.requiredWord("role", DeliveredSession.Role.class), initials));
            reader.done();
        }
        return read;
    }

    private DeliveredSession.Totals totals(FieldReader reader) {
        DeliveredSession.Totals read = new DeliveredSession.Totals(
                ofTotals(reader, "tumescentMl"),
                ofTotals(reader, "lidocaineMg"),
                ofTotals(reader, "polidocanolMg"),
                ofTotals(reader, "tetradecylMg"),
                ofTotals(reader, "foamMl"),
                ofTotals(reader, "adhesiveMl"));
        reader.done();
        return read;
    }

    private List<DeliveredSegment> segments(FieldReader root) {
        List<FieldReader> readers =
                root.required("segments", root.objects("segments")).orElse(List.of());
        if (root.isList("segments") && readers.isEmpty()) {
            root.fault("segments", "must hold at least one entry");
        }
        List<DeliveredSegment> read = new ArrayList<>();
        Set<String> refs = new HashSet<>();
        for (FieldReader reader : readers) {
            DeliveredSegment segment = segments.read(reader);
            if (!segment.ref().isEmpty() && !refs.add(segment.ref())) {
                reader.fault("ref", "\"" + segment.ref() + "\" stands twice; put its stretches together");
            }
            read.add(segment);
        }
        return read;
    }

    private static DeliveredSession.Aftercare aftercare(FieldReader reader) {
        DeliveredSession.Aftercare read = new DeliveredSession.Aftercare(
                reader.text("compression"),
                reader.text("prophylaxis"),
                reader.flag("adviceGiven"),
                reader.text("followUp"));
        reader.done();
        return read;
    }

    private OptionalDouble number(FieldReader reader, String field) {
        return numbers.number(reader, field, "delivered." + field);
    }

    private OptionalDouble ofTotals(FieldReader reader, String field) {
        return numbers.number(reader, field, "delivered.totals." + field);
    }

    /** An absent part reads like an empty object: everything in it is unknown. */
    static FieldReader part(FieldReader object, String field) {
        return object.object(field).orElseGet(() -> object.emptyPart(field));
    }
}
