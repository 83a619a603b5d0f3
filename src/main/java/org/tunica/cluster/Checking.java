package org.tunica.cluster;

import java.util.ArrayList;
import java.util.List;
import org.tunica.pastcases.CaseProgress;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SegmentRows;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Holds an index against the cases it was loaded from, segment by segment. */
final class Checking {
    private static final int AT_ONCE = 500;
    private static final int MOST_NAMED = 20;

    private final Engine engine;
    private final String name;
    private final Layout layout;
    private final List<String> ids = new ArrayList<>();
    private final List<ObjectNode> wanted = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();
    private final List<String> different = new ArrayList<>();
    private long segments;
    private long missingCount;
    private long differentCount;

    Checking(Engine engine, String name, Layout layout) {
        this.engine = engine;
        this.name = name;
        this.layout = layout;
    }

    Verification check(CaseSource source, SegmentRows rows, CaseProgress progress) {
        rows.each(source, row -> {
            ids.add(Layout.id(row.order()));
            wanted.add(layout.document(row));
            if (++segments % AT_ONCE == 0) {
                compare();
                progress.at(0, 0, segments);
            }
        });
        compare();
        long there = engine.ask("GET", "/" + name + "/_count", Engine.object())
                .path("count")
                .longValue();
        long extra = Math.max(0, there - (segments - missingCount));
        return new Verification(segments, missingCount, differentCount, extra, missing, different);
    }

    private void compare() {
        if (ids.isEmpty()) {
            return;
        }
        ObjectNode body = Engine.object();
        ArrayNode asked = body.putArray("ids");
        ids.forEach(asked::add);
        JsonNode docs = engine.ask("POST", "/" + name + "/_mget", body).path("docs");
        for (int i = 0; i < ids.size(); i++) {
            JsonNode doc = docs.path(i);
            if (!doc.path("found").asBoolean(false)) {
                missingCount++;
                name(missing, ids.get(i));
            } else if (!doc.path("_source").equals(wanted.get(i))) {
                differentCount++;
                name(different, ids.get(i));
            }
        }
        ids.clear();
        wanted.clear();
    }

    private static void name(List<String> names, String id) {
        if (names.size() < MOST_NAMED) {
            names.add(id);
        }
    }
}
