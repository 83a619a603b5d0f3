package org.tunica.knowledge;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.tunica.casefile.FieldReader;

/** Reads the fields every number of knowledge/ shares: source, status, since, change, note. */
final class ProvenanceReader {
    private static final Pattern SOURCE = Pattern.compile("S-\\d{4}");
    private static final Pattern CHANGE = Pattern.compile("\\d{4}");

    private ProvenanceReader() {}

    static Provenance provenance(FieldReader reader) {
        return new Provenance(
                matching(reader, "source", SOURCE, "a source id such as S-0001"),
                reader.requiredWord("status", Standing.class),
                date(reader, "since"),
                matching(reader, "change", CHANGE, "a change number of four digits in quotes"),
                reader.text("note"));
    }

    static Quantity quantity(String id, FieldReader reader) {
        Quantity quantity = new Quantity(
                id,
                reader.requiredText("says"),
                reader.requiredNumber("value"),
                reader.number("low"),
                reader.number("high"),
                reader.requiredText("unit"),
                provenance(reader));
        ordered(reader, quantity.low(), OptionalDouble.of(quantity.value()), quantity.high());
        reader.done();
        return quantity;
    }

    static SettingRange setting(String id, FieldReader reader) {
        SettingRange range = new SettingRange(
                id,
                reader.number("low"),
                reader.number("typical"),
                reader.number("high"),
                reader.requiredText("unit"),
                provenance(reader));
        if (reader.readable() && !reader.has("low") && !reader.has("typical") && !reader.has("high")) {
            reader.fault("low", "at least one of low, typical and high must be given");
        }
        ordered(reader, range.low(), range.typical(), range.high());
        reader.done();
        return range;
    }

    static LocalDate date(FieldReader reader, String field) {
        String text = reader.requiredText(field);
        try {
            return text.isEmpty() ? LocalDate.EPOCH : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            reader.fault(field, "must be a date such as 2026-01-31, is \"" + text + "\"");
            return LocalDate.EPOCH;
        }
    }

    static String matching(FieldReader reader, String field, Pattern pattern, String expected) {
        String text = reader.requiredText(field);
        if (!text.isEmpty() && !pattern.matcher(text).matches()) {
            reader.fault(field, "must be " + expected + ", is \"" + text + "\"");
        }
        return text;
    }

    private static void ordered(FieldReader reader, OptionalDouble low, OptionalDouble middle, OptionalDouble high) {
        if (above(low, middle) || above(middle, high) || above(low, high)) {
            reader.fault("low", "low, typical (or value) and high must be in rising order");
        }
    }

    private static boolean above(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent() && a.getAsDouble() > b.getAsDouble();
    }
}
