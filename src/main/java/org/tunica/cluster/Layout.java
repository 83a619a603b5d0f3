package org.tunica.cluster;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.pastcases.PastCase;
import org.tunica.similar.SegmentRow;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the engine keeps of a past segment, and how. */
final class Layout {
    static final String ORDER = "order";
    static final String KIND = "kind";
    static final String MARKS = "marks";
    static final String VALUES = "values";
    static final String TECHNIQUE = "technique";
    static final String OUTCOME = "outcome";
    static final String INVENTED = "invented";
    static final String SITE = "site";
    static final String NOTES = "notes";

    /** The case as its line in a case base; it stands with the first of its segments. */
    static final String LINE = "line";

    private static final int PLACE_BITS = 7;

    private final Function<PastCase, String> toLine;

    Layout(Function<PastCase, String> toLine) {
        this.toLine = toLine;
    }

    /**
     * The settings of an index while it is being loaded: written to as many copies as will answer, searched by nobody.
     *
     * @param shards parts it is split into
     * @param copies of each part beside the first
     */
    static ObjectNode settings(int shards, int copies) {
        ObjectNode body = Engine.object();
        body.putObject("settings")
                .put("number_of_shards", shards)
                .put("number_of_replicas", copies)
                .put("refresh_interval", "-1")
                .put("codec", "best_compression");
        ObjectNode mappings = body.putObject("mappings").put("dynamic", "strict");
        ObjectNode fields = mappings.putObject("properties");
        fields.putObject(ORDER).put("type", "long");
        word(fields, KIND);
        word(fields, TECHNIQUE);
        word(fields, OUTCOME);
        word(fields, INVENTED);
        word(fields, SITE);
        // a mark counts what the question says it counts, however often it occurs
        fields.putObject(MARKS)
                .put("type", "keyword")
                .put("similarity", "boolean")
                .put("doc_values", false);
        fields.putObject(NOTES).put("type", "text").put("analyzer", "standard");
        // read for each segment that is compared, so not from where the whole documents lie
        fields.putObject(VALUES).put("type", "keyword").put("index", false);
        fields.putObject(LINE).put("type", "keyword").put("index", false).put("doc_values", false);
        return body;
    }

    private static void word(ObjectNode fields, String name) {
        fields.putObject(name).put("type", "keyword");
    }

    /** The id of a segment of this order. */
    static String id(long order) {
        return String.format(Locale.ROOT, "%016x", order);
    }

    /** The id of the first segment of a case. */
    static String idOfCase(long caseNumber) {
        return id(caseNumber << PLACE_BITS);
    }

    ObjectNode document(SegmentRow row) {
        ObjectNode document = Engine.object().put(ORDER, row.order()).put(KIND, row.kind());
        put(document.putArray(MARKS), row.marks());
        document.put(VALUES, written(row.values()));
        document.put(TECHNIQUE, row.technique());
        row.outcome().ifPresent(outcome -> document.put(OUTCOME, outcome.word()));
        document.put(INVENTED, Boolean.toString(row.invented())).put(SITE, row.site());
        put(document.putArray(NOTES), row.notes());
        if (row.place() == 0) {
            document.put(LINE, toLine.apply(row.pastCase()));
        }
        return document;
    }

    private static String written(List<Integer> values) {
        return values.stream().map(String::valueOf).collect(Collectors.joining(","));
    }

    /** The values of a segment, as they were written. */
    static List<Integer> values(String written) {
        return Arrays.stream(written.split(",")).map(Integer::valueOf).toList();
    }

    private static void put(ArrayNode array, Iterable<String> words) {
        words.forEach(array::add);
    }

    /** About how many bytes a document takes on its way. */
    static int bytes(String document) {
        return document.getBytes(StandardCharsets.UTF_8).length;
    }
}
