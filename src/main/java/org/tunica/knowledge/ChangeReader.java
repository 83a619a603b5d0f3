package org.tunica.knowledge;

import java.util.List;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads one change record. */
final class ChangeReader {
    private static final Pattern NUMBER = Pattern.compile("\\d{4}");

    private ChangeReader() {}

    static ChangeRecord read(FieldReader reader) {
        ChangeRecord change = new ChangeRecord(
                ProvenanceReader.matching(reader, "number", NUMBER, "four digits in quotes"),
                reader.requiredText("title"),
                reader.requiredWord("status", ChangeRecord.Status.class),
                people(reader, "authors"),
                people(reader, "reviewers"),
                people(reader, "approvers"),
                reader.requiredText("reason"),
                reader.texts("sources"),
                reader.texts("rules"),
                reader.texts("limits"),
                ProvenanceReader.date(reader, "effective"),
                reader.texts("replaces"),
                reader.texts("retires"));
        if (reader.readable() && change.authors().isEmpty()) {
            reader.fault("authors", "at least one author must be named");
        }
        reader.done();
        return change;
    }

    private static List<ChangeRecord.Person> people(FieldReader reader, String field) {
        return reader.objects(field).orElse(List.of()).stream()
                .map(person -> {
                    ChangeRecord.Person read =
                            new ChangeRecord.Person(person.requiredText("role"), person.requiredText("initials"));
                    person.done();
                    return read;
                })
                .toList();
    }
}
