package org.tunica.cluster;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.stream.Stream;
import org.tunica.similar.CaseSource;
import org.tunica.similar.Question;
import org.tunica.similar.SearchWords;
import org.tunica.similar.SegmentIndex;
import org.tunica.similar.SimilarFilter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The index in use on the engine. */
final class ClusterIndex implements SegmentIndex {
    private static final long CASE_BITS = 7;
    private static final long PLACE = (1 << CASE_BITS) - 1;

    private final Engine engine;
    private final String name;
    private final Meta meta;

    /** What was written down when it was loaded. */
    record Meta(String digest, String says, boolean invented, List<String> leftOut) {
        /** Of a source that has handed over all it has. */
        static Meta of(CaseSource source) {
            return new Meta(source.digest(), source.says(), source.invented(), source.leftOut());
        }

        /** What stands at the index of a name, if there is one. */
        static Optional<Meta> at(Engine engine, String name) {
            Engine.Answer answer = engine.tryTo("GET", "/" + name + "/_mapping", Engine.object());
            if (answer.missing()) {
                return Optional.empty();
            }
            if (answer.overloaded() || answer.body().has("error")) {
                throw new EngineUnavailable("The search engine does not tell of its index: " + answer.reason());
            }
            return answer.body().values().stream()
                    .findFirst()
                    .map(index -> of(index.path("mappings").path("_meta")));
        }

        /** The same after what was there before was brought up to it. */
        Meta after(Meta before, List<String> goneIds) {
            List<String> all = Stream.concat(before.leftOut.stream(), leftOut.stream())
                    .distinct()
                    .filter(id -> !goneIds.contains(id))
                    .toList();
            return new Meta(digest, says, invented, all);
        }

        static Meta of(JsonNode meta) {
            return new Meta(
                    meta.path("digest").asString(""),
                    meta.path("says").asString(""),
                    meta.path("invented").asBoolean(false),
                    meta.path("leftOut").valueStream().map(JsonNode::asString).toList());
        }

        ObjectNode json() {
            ObjectNode json = Engine.object();
            ObjectNode meta = json.putObject("_meta")
                    .put("digest", digest)
                    .put("says", says)
                    .put("invented", invented);
            leftOut.forEach(meta.putArray("leftOut")::add);
            return json;
        }
    }

    ClusterIndex(Engine engine, String name, Meta meta) {
        this.engine = engine;
        this.name = name;
        this.meta = meta;
    }

    Meta meta() {
        return meta;
    }

    @Override
    public int size() {
        return Math.toIntExact(count(Engine.object()));
    }

    @Override
    public int invented() {
        ObjectNode query = Engine.object();
        query.putObject("term").put(Layout.INVENTED, "true");
        return Math.toIntExact(count(query));
    }

    private long count(ObjectNode query) {
        ObjectNode body = Engine.object();
        if (!query.isEmpty()) {
            body.set("query", query);
        }
        return whole(engine.ask("POST", "/" + name + "/_count", body))
                .path("count")
                .longValue();
    }

    @Override
    public Places nearest(Question question, SimilarFilter filter, int most) {
        return new ClusterSearch(this, question, filter, most).run();
    }

    @Override
    public Places byWords(String words, SimilarFilter filter, int most) {
        SortedSet<String> terms = SearchWords.of(words);
        if (terms.isEmpty()) {
            return new Places(List.of(), 0, 0);
        }
        ObjectNode body = Engine.object().put("size", most).put("track_total_hits", true);
        ObjectNode bool = body.putObject("query").putObject("bool");
        ArrayNode must = bool.putArray("must");
        terms.forEach(term -> must.addObject().putObject("term").put(Layout.NOTES, term));
        bool.set("filter", filters(filter));
        body.set("sort", order());
        body.putArray("_source").add(Layout.ORDER);
        // without asking every part first how often a word occurs, each part would reckon its own scores
        JsonNode hits = search("?search_type=dfs_query_then_fetch", body).path("hits");
        List<At> best = new ArrayList<>();
        for (JsonNode hit : hits.path("hits")) {
            best.add(at(
                    hit.path("_source").path(Layout.ORDER).longValue(),
                    hit.path("_score").floatValue()));
        }
        return new Places(best, hits.path("total").path("value").intValue(), 0);
    }

    static At at(long order, double score) {
        return new At(order >>> CASE_BITS, (int) (order & PLACE), score);
    }

    /** Best first, the same in the order of the random ids. */
    static ArrayNode order() {
        ArrayNode sort = Engine.object().putArray("sort");
        sort.addObject().putObject("_score").put("order", "desc");
        sort.addObject().putObject(Layout.ORDER).put("order", "asc");
        return sort;
    }

    /** Everything that must hold of a segment. */
    static ArrayNode filters(SimilarFilter filter) {
        ArrayNode all = Engine.object().putArray("all");
        filter.technique().ifPresent(id -> must(all, Layout.TECHNIQUE, id));
        filter.outcome().ifPresent(outcome -> must(all, Layout.OUTCOME, outcome.word()));
        filter.invented().ifPresent(flag -> must(all, Layout.INVENTED, Boolean.toString(flag)));
        filter.site().ifPresent(site -> must(all, Layout.SITE, site));
        filter.words().ifPresent(words -> {
            SortedSet<String> terms = SearchWords.of(words);
            terms.forEach(term -> must(all, Layout.NOTES, term));
            if (terms.isEmpty()) {
                all.addObject().putObject("match_none");
            }
        });
        return all;
    }

    private static void must(ArrayNode all, String field, String value) {
        all.addObject().putObject("term").put(field, value);
    }

    /** One search; an answer of which any part is missing is none. */
    JsonNode search(String query, ObjectNode body) {
        return whole(engine.ask("POST", "/" + name + "/_search" + query, body));
    }

    private static JsonNode whole(JsonNode answer) {
        if (answer.path("_shards").path("failed").asInt(0) > 0
                || answer.path("timed_out").asBoolean(false)) {
            throw new EngineUnavailable("A part of the index does not answer; half an answer is none");
        }
        return answer;
    }

    @Override
    public void close() {
        engine.close();
    }
}
