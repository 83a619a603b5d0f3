package org.tunica.cluster;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.CaseProgress;
import org.tunica.similar.CaseSource;
import org.tunica.similar.SegmentRow;
import org.tunica.similar.SegmentRows;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Loads an index beside the one in use, counts it, and lets it take the place of the other in one step. */
final class Loading {
    private static final int TOLD_EVERY = 1_000;
    private static final int REFUSED = 400;

    private final Engine engine;
    private final Names names;
    private final Layout layout;

    Loading(Engine engine, Names names, Layout layout) {
        this.engine = engine;
        this.names = names;
        this.layout = layout;
    }

    /** What was loaded. */
    record Loaded(long cases, long segments) {}

    /**
     * Loads all of a source.
     *
     * @param shards parts of the index
     * @param copies of each part beside the first
     * @param over whether a half-loaded index, left by a load that died, may be thrown away
     * @throws FaultyInput when somebody else is loading, or was and died
     * @throws EngineUnavailable when the engine does not take it; the index in use is untouched
     */
    Loaded load(CaseSource source, SegmentRows rows, int shards, int copies, boolean over, CaseProgress progress) {
        String fresh = free(over);
        create(fresh, shards, copies);
        try {
            Loaded loaded = fill(fresh, source, rows, progress);
            finish(fresh, source, loaded);
            return loaded;
        } catch (RuntimeException e) {
            forget(fresh, e);
            throw e;
        }
    }

    /** The one of the two that is not in use. */
    private String free(boolean over) {
        Set<String> used = inUse();
        String free = names.turns().stream()
                .filter(name -> !used.contains(name))
                .findFirst()
                .orElseThrow();
        if (over) {
            engine.tryTo("DELETE", "/" + free, Engine.object());
        }
        return free;
    }

    /** The name is taken in one step, so that of two who load at once the second is told. */
    private void create(String index, int shards, int copies) {
        Engine.Answer answer = engine.tryTo("PUT", "/" + index, Layout.settings(shards, copies));
        if (answer.reason().contains("resource_already_exists_exception")) {
            throw new FaultyInput(
                    "index",
                    List.of(new Fault(
                            index,
                            "is half loaded: somebody is loading it now, or a load died; --over throws it away")));
        }
        if (answer.status() >= REFUSED) {
            throw new EngineUnavailable("The search engine makes no index: " + answer.reason());
        }
    }

    private Set<String> inUse() {
        Engine.Answer answer = engine.tryTo("GET", "/_alias/" + names.inUse(), Engine.object());
        Set<String> used = new TreeSet<>();
        if (!answer.missing()) {
            answer.body().propertyNames().forEach(used::add);
        }
        return used;
    }

    private Loaded fill(String index, CaseSource source, SegmentRows rows, CaseProgress progress) {
        AtomicLong segments = new AtomicLong();
        AtomicLong cases = new AtomicLong();
        try (BulkLoad load = new BulkLoad(engine, index)) {
            rows.each(source, row -> {
                load.add(Layout.id(row.order()), layout.document(row).toString());
                segments.incrementAndGet();
                tell(row, cases, progress);
            });
            load.finish();
        }
        return new Loaded(cases.get(), segments.get());
    }

    private static void tell(SegmentRow row, AtomicLong cases, CaseProgress progress) {
        if (row.place() == 0 && cases.incrementAndGet() % TOLD_EVERY == 0) {
            progress.at(0, 0, cases.get());
        }
    }

    /** Makes it searchable, counts it, writes down what is in it and puts it in use. */
    private void finish(String index, CaseSource source, Loaded loaded) {
        engine.ask("POST", "/" + index + "/_refresh", Engine.object());
        long there = engine.ask("GET", "/" + index + "/_count", Engine.object())
                .path("count")
                .longValue();
        if (there != loaded.segments()) {
            throw new EngineUnavailable(
                    "Of " + loaded.segments() + " segments sent " + there + " are in the index; it is not used");
        }
        ObjectNode meta = Engine.object();
        meta.putObject("_meta")
                .put("digest", source.digest())
                .put("says", source.says())
                .put("invented", source.invented())
                .put("cases", loaded.cases())
                .put("segments", loaded.segments());
        engine.ask("PUT", "/" + index + "/_mapping", meta);
        ObjectNode searched = Engine.object();
        searched.putObject("index").put("refresh_interval", "1s");
        engine.ask("PUT", "/" + index + "/_settings", searched);
        swap(index);
    }

    private void swap(String index) {
        Set<String> before = inUse();
        ObjectNode body = Engine.object();
        ArrayNode actions = body.putArray("actions");
        actions.addObject().putObject("add").put("index", index).put("alias", names.inUse());
        before.forEach(old -> actions.addObject().putObject("remove_index").put("index", old));
        JsonNode done = engine.ask("POST", "/_aliases", body);
        if (!done.path("acknowledged").asBoolean(false)) {
            throw new EngineUnavailable("Not every node has heard of the new index yet");
        }
    }

    private void forget(String index, RuntimeException why) {
        try {
            engine.tryTo("DELETE", "/" + index, Engine.object());
        } catch (EngineUnavailable e) {
            why.addSuppressed(e);
        }
    }
}
