package org.tunica.knowledge;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Word;

/** Reads how alike the values of an attribute are. */
final class LikenessReader {
    private LikenessReader() {}

    /** How the likeness of two numbers falls with their difference. */
    private enum Shape implements Word {
        LINEAR,
        EXPONENT
    }

    static LikenessRule rule(String id, FieldReader reader) {
        LikenessRule rule = new LikenessRule(
                id,
                reader.requiredText("says"),
                reader.requiredText("field"),
                positive(reader, "weight"),
                comparison(reader),
                ProvenanceReader.provenance(reader));
        reader.done();
        return rule;
    }

    private static Comparison comparison(FieldReader reader) {
        return switch (reader.requiredWord("kind", Comparison.Kind.class)) {
            case NUMERIC -> numeric(reader);
            case ORDINAL -> new Comparison.Ordinal(steps(reader));
            case CATEGORICAL -> new Comparison.Categorical(groups(reader), likeness(reader, "otherwise"));
            case TOGETHER -> new Comparison.Together(ways(reader));
        };
    }

    private static Comparison.Numeric numeric(FieldReader reader) {
        String unit = reader.requiredText("unit");
        UnitOfName.of(reader.has("field") ? reader.text("field").orElse("") : lastName(reader))
                .filter(promised -> !promised.equals(unit))
                .ifPresent(promised -> reader.fault("unit", "must be " + promised + ", is " + unit));
        double range = positive(reader, "range");
        double upTo = reader.has("upTo") ? positive(reader, "upTo") : Double.POSITIVE_INFINITY;
        boolean bent = reader.requiredWord("shape", Shape.class) == Shape.EXPONENT;
        return new Comparison.Numeric(range, bent ? positive(reader, "exponent") : 1, upTo, unit);
    }

    /** The name of a number that stands under its own name. */
    private static String lastName(FieldReader reader) {
        return reader.path().substring(reader.path().lastIndexOf('.') + 1);
    }

    private static Map<String, Double> steps(FieldReader reader) {
        Map<String, Double> steps = new LinkedHashMap<>();
        reader.required("steps", reader.object("steps")).ifPresent(scale -> {
            scale.names().forEach(word -> steps.put(word, scale.requiredNumber(word)));
            if (scale.readable() && steps.values().stream().distinct().count() < 2) {
                reader.fault("steps", "at least two different steps must be given");
            }
        });
        return Collections.unmodifiableMap(steps);
    }

    private static List<Comparison.Group> groups(FieldReader reader) {
        return reader.required("alike", reader.objects("alike")).orElse(List.of()).stream()
                .map(LikenessReader::group)
                .toList();
    }

    private static Comparison.Group group(FieldReader reader) {
        Comparison.Group group = new Comparison.Group(reader.texts("words"), likeness(reader, "likeness"));
        if (reader.readable() && group.words().stream().distinct().count() < 2) {
            reader.fault("words", "at least two different words must be given");
        }
        reader.done();
        return group;
    }

    private static Map<String, Map<String, Comparison.Numeric>> ways(FieldReader reader) {
        Map<String, Map<String, Comparison.Numeric>> ways = new LinkedHashMap<>();
        reader.required("ways", reader.object("ways"))
                .ifPresent(all -> all.parts().forEach((way, parts) -> ways.put(way, numbers(parts))));
        return Collections.unmodifiableMap(ways);
    }

    private static Map<String, Comparison.Numeric> numbers(FieldReader way) {
        Map<String, Comparison.Numeric> numbers = new LinkedHashMap<>();
        way.parts().forEach((name, part) -> {
            numbers.put(name, numeric(part));
            part.done();
        });
        return Collections.unmodifiableMap(numbers);
    }

    private static double positive(FieldReader reader, String field) {
        double number = reader.requiredNumber(field);
        if (number <= 0) {
            reader.fault(field, "must be more than 0");
        }
        return number;
    }

    private static double likeness(FieldReader reader, String field) {
        double number = reader.requiredNumber(field);
        if (number < 0 || number > 1) {
            reader.fault(field, "must be from 0 to 1");
        }
        return number;
    }
}
