package org.tunica.cluster;

import java.util.List;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SegmentRows;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Brings the index in use up to what came and went since, case by case; doing it twice changes nothing. */
final class Following {
    private static final int CASE_BITS = 7;

    private final Engine engine;
    private final String name;
    private final Layout layout;

    Following(Engine engine, String name, Layout layout) {
        this.engine = engine;
        this.name = name;
        this.layout = layout;
    }

    /**
     * Adds cases, takes others out, and writes down what is there now: last, so that whoever dies before is followed by another
     * who does all of it again.
     */
    void follow(CaseSource added, SegmentRows rows, List<String> goneIds, ClusterIndex.Meta before) {
        try (BulkLoad load = new BulkLoad(engine, name)) {
            rows.each(
                    added,
                    row -> load.add(Layout.id(row.order()), layout.document(row).toString()));
            load.finish();
        }
        engine.ask("POST", "/" + name + "/_refresh", Engine.object());
        goneIds.forEach(this::remove);
        engine.ask("POST", "/" + name + "/_refresh", Engine.object());
        engine.ask(
                "PUT",
                "/" + name + "/_mapping",
                ClusterIndex.Meta.of(added).after(before, goneIds).json());
    }

    private void remove(String caseId) {
        long first = SegmentRows.caseNumber(caseId) << CASE_BITS;
        ObjectNode body = Engine.object().put("size", 1 << CASE_BITS).put("_source", false);
        body.putObject("query")
                .putObject("range")
                .putObject(Layout.ORDER)
                .put("gte", first)
                .put("lt", first + (1 << CASE_BITS));
        JsonNode hits =
                engine.ask("POST", "/" + name + "/_search", body).path("hits").path("hits");
        for (JsonNode hit : hits) {
            engine.ask("DELETE", "/" + name + "/_doc/" + hit.path("_id").asString(""), Engine.object());
        }
    }
}
