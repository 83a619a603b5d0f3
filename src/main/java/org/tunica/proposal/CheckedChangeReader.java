package org.tunica.proposal;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.knowledge.RecordLists;
import org.tunica.review.Difference;

/** Reads a checked change as {@link CheckedChangeText} writes it. */
final class CheckedChangeReader {
    private CheckedChangeReader() {}

    static CheckedChange read(String what, String json) {
        Faults faults = new Faults();
        FieldReader reader =
                new FieldReader(JsonText.parseRecord(what, json.getBytes(StandardCharsets.UTF_8)), "$", faults);
        if (!reader.requiredText("format").equals(CheckedChange.FORMAT)) {
            reader.fault("format", "must be " + CheckedChange.FORMAT);
        }
        FieldReader before =
                reader.required("before", reader.object("before")).orElseGet(() -> reader.emptyPart("before"));
        CheckedChange change = new CheckedChange(
                new Opening(
                        reader.requiredText("number"),
                        reader.requiredText("author"),
                        before.requiredText("release"),
                        before.requiredText("digest"),
                        day(before, "on")),
                day(reader, "checkedOn"),
                reader.object("record").map(CheckedChangeReader::record),
                reader.object("covers")
                        .map(covers -> new CheckedChange.Covers(
                                covers.requiredText("rules"), covers.requiredText("scenarios"))),
                all(reader, "checks", CheckedChangeReader::check),
                all(reader, "differences", CheckedChangeReader::difference),
                reader.text("lines").orElse(""));
        faults.throwIfAny(what);
        return change;
    }

    private static <T> List<T> all(FieldReader reader, String field, Function<FieldReader, T> read) {
        return reader.required(field, reader.objects(field)).orElse(List.of()).stream()
                .map(read)
                .toList();
    }

    private static CheckedChange.Told record(FieldReader reader) {
        return new CheckedChange.Told(
                reader.requiredText("title"),
                reader.requiredText("reason"),
                new RecordLists(
                        reader.texts("sources"),
                        reader.texts("rules"),
                        reader.texts("limits"),
                        reader.texts("retires")));
    }

    private static Check check(FieldReader reader) {
        return new Check(
                reader.requiredWord("check", Check.Question.class),
                reader.requiredWord("result", Check.Result.class),
                reader.texts("findings"));
    }

    private static Difference difference(FieldReader reader) {
        return new Difference(
                reader.requiredWord("part", Difference.Part.class),
                reader.requiredWord("act", Difference.Act.class),
                reader.requiredText("id"),
                reader.requiredText("title"),
                all(reader, "details", CheckedChangeReader::detail));
    }

    private static Difference.Detail detail(FieldReader reader) {
        Optional<String> before = reader.text("before");
        return new Difference.Detail(
                reader.requiredText("aspect"),
                before.orElse(""),
                reader.text("after").orElse(""));
    }

    private static LocalDate day(FieldReader reader, String field) {
        try {
            return LocalDate.parse(reader.requiredText(field));
        } catch (DateTimeParseException e) {
            reader.fault(field, "is no day such as 2026-03-01");
            return LocalDate.EPOCH;
        }
    }
}
