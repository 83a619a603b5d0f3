package org.tunica.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tunica.casefile.FieldReader;

/** Reads from what a part of a made-up case is drawn, and whether its numbers can be drawn from. */
final class DistributionReader {
    private DistributionReader() {}

    static Distribution distribution(String id, FieldReader reader) {
        Distribution.Shape shape = reader.requiredWord("shape", Distribution.Shape.class);
        Map<String, Double> numbers = new LinkedHashMap<>();
        reader.required("numbers", reader.object("numbers"))
                .ifPresent(part -> part.names().forEach(name -> numbers.put(name, part.requiredNumber(name))));
        Distribution distribution = new Distribution(
                id,
                reader.requiredText("says"),
                shape,
                reader.requiredText("unit"),
                numbers,
                ProvenanceReader.provenance(reader));
        if (reader.has("numbers") && reader.has("shape")) {
            check(distribution, reader);
        }
        reader.done();
        return distribution;
    }

    private static void check(Distribution read, FieldReader reader) {
        List<String> names = read.shape().names();
        if (read.numbers().isEmpty()
                || !names.isEmpty() && !names.equals(List.copyOf(read.numbers().keySet()))) {
            reader.fault("numbers", "must be " + (names.isEmpty() ? "given" : String.join(", ", names)));
            return;
        }
        switch (read.shape()) {
            case CHOICE -> weights(read, reader);
            case SHARES -> shares(read, reader);
            case LOGISTIC -> curve(read, reader, "sd", Double.NEGATIVE_INFINITY);
            case LOG_LOGISTIC -> curve(read, reader, "spread", 0);
            case VALUES -> {}
        }
    }

    private static void weights(Distribution read, FieldReader reader) {
        if (read.numbers().values().stream().anyMatch(weight -> !(weight > 0))) {
            reader.fault("numbers", "a weight must be more than 0; leave out what is never drawn");
        }
    }

    private static void shares(Distribution read, FieldReader reader) {
        if (read.numbers().values().stream().anyMatch(share -> !(share >= 0 && share <= 1))) {
            reader.fault("numbers", "a share must be 0 to 1");
        }
    }

    private static void curve(Distribution read, FieldReader reader, String width, double above) {
        double low = read.number("low");
        if (!(read.number(width) > 0) || !(low > above) || !(low < read.number("high"))) {
            reader.fault("numbers", width + " must be more than 0, low under high, and both where the curve is");
        }
    }
}
