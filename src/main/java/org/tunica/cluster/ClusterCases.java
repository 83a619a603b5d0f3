package org.tunica.cluster;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.pastcases.PastCase;
import org.tunica.pastcases.PastCaseReader;
import org.tunica.similar.CaseSource;
import org.tunica.similar.LeftOut;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Cases as the engine keeps them, asked for by the number of their id. */
final class ClusterCases implements CaseSource {
    private final Engine engine;
    private final String name;
    private final ClusterIndex.Meta meta;
    private final PastCaseReader reader;

    ClusterCases(Engine engine, String name, ClusterIndex.Meta meta, PastCaseReader reader) {
        this.engine = engine;
        this.name = name;
        this.meta = meta;
        this.reader = reader;
    }

    @Override
    public boolean invented() {
        return meta.invented();
    }

    /** Asked for each time, as what is in the index changes while it is open. */
    @Override
    public String says() {
        ClusterIndex.Meta now = ClusterIndex.Meta.at(engine, name).orElse(meta);
        return LeftOut.told(now.says(), now.leftOut());
    }

    @Override
    public String digest() {
        return meta.digest();
    }

    /** Not to be had: whoever wants every case has the base they were loaded from. */
    @Override
    public void each(Taker taker) {
        throw new UnsupportedOperationException("the cases of an index elsewhere are asked for one by one");
    }

    @Override
    public PastCase at(long where) {
        return at(List.of(where)).get(0);
    }

    @Override
    public List<PastCase> at(List<Long> wheres) {
        if (wheres.isEmpty()) {
            return List.of();
        }
        Map<String, String> lines = lines(wheres);
        return wheres.stream().map(where -> read(Layout.idOfCase(where), lines)).toList();
    }

    private Map<String, String> lines(List<Long> wheres) {
        ObjectNode body = Engine.object();
        ArrayNode ids = body.putArray("ids");
        wheres.stream().distinct().map(Layout::idOfCase).forEach(ids::add);
        Map<String, String> lines = new TreeMap<>();
        JsonNode docs = engine.ask("POST", "/" + name + "/_mget?_source_includes=" + Layout.LINE, body)
                .path("docs");
        for (JsonNode doc : docs) {
            if (doc.path("found").asBoolean(false)) {
                lines.put(
                        doc.path("_id").asString(""),
                        doc.path("_source").path(Layout.LINE).asString(""));
            }
        }
        return lines;
    }

    private PastCase read(String id, Map<String, String> lines) {
        String line = lines.get(id);
        if (line == null) {
            throw new EngineUnavailable("The index changed while it was asked; ask again");
        }
        return reader.read("past case " + id, line.getBytes(StandardCharsets.UTF_8));
    }
}
