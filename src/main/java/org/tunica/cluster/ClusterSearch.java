package org.tunica.cluster;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.tunica.similar.Question;
import org.tunica.similar.SegmentIndex;
import org.tunica.similar.SimilarFilter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds the segments most like a question exactly. Let {@code N} be the sum of weights by likeness over what is known of both,
 * {@code K} the sum of those weights, {@code K0} that of all weights known of the question; likeness is {@code N / K}. Whoever is
 * at least {@code c} alike has
 *
 * <pre>
 *   N + c (K0 - K) >= c K0,
 * </pre>
 *
 * and the left side is a sum over marks: what each can add to {@code N} at most, and {@code c} times its weight for each field with
 * nothing to compare. So one list of the engine, in the order of that sum, holds before the value {@code c K0} everybody who is
 * at least {@code c} alike; and whoever is at least {@code d > c} alike stands before {@code c K0 + (d - c) K}. What is listed is
 * compared exactly, and the list is read until nobody behind can be among the best.
 *
 * <p>Who is so alike also bears, in each field that counts enough, one of the marks that do not cost too much
 * ({@link Question#mustBear}); the engine sums for those alone. {@code c} is a guess to begin with. Were it too high, a second
 * list is asked for, from the least likeness among the best of the first.
 */
final class ClusterSearch {
    private static final Comparator<Near> BEST_FIRST =
            Comparator.comparingDouble((Near near) -> -near.likeness()).thenComparingLong(Near::order);

    /** How alike the last of ten is at least in most questions; a guess too low makes the engine sum for more. */
    private static final List<Double> GUESSES = List.of(0.97, 0.9, 0.0);

    private static final int FIRST_PAGE = 100;
    private static final int LONGEST_PAGE = 5_000;
    private static final int GROWTH = 4;
    private static final int MOST_KINDS = 65_000;

    /** The engine sums in numbers of seven digits; nobody must be missed for want of the eighth. */
    private static final double ROUNDING = 1 + 1e-5;

    private final ClusterIndex index;
    private final Question question;
    private final SimilarFilter filter;
    private final int most;
    private final PriorityQueue<Near> best = new PriorityQueue<>(BEST_FIRST.reversed());
    private final Set<Long> seen = new HashSet<>();

    /** A segment and how alike it is. */
    private record Near(double likeness, long order) {}

    ClusterSearch(ClusterIndex index, Question question, SimilarFilter filter, int most) {
        this.index = index;
        this.question = question;
        this.filter = filter;
        this.most = most;
    }

    SegmentIndex.Places run() {
        int considered = 0;
        int tooLittle = 0;
        ArrayNode mute = Engine.object().putArray("mute");
        for (JsonNode kind : kinds()) {
            int count = kind.path("doc_count").intValue();
            considered += count;
            if (question.tooLittle(kind.path("key").asString(""))) {
                tooLittle += count;
                mute.add(kind.path("key"));
            }
        }
        if (considered > tooLittle) {
            list(mute);
        }
        List<Near> sorted = new ArrayList<>(best);
        sorted.sort(BEST_FIRST);
        return new SegmentIndex.Places(
                sorted.stream()
                        .map(near -> ClusterIndex.at(near.order(), near.likeness()))
                        .toList(),
                considered,
                tooLittle);
    }

    /** How many segments of each kind pass the filter. */
    private JsonNode kinds() {
        ObjectNode body = Engine.object().put("size", 0).put("track_total_hits", false);
        body.putObject("query").putObject("bool").set("filter", ClusterIndex.filters(filter));
        body.putObject("aggs")
                .putObject("kinds")
                .putObject("terms")
                .put("field", Layout.KIND)
                .put("size", MOST_KINDS);
        return index.search("", body).path("aggregations").path("kinds").path("buckets");
    }

    /** Reads lists, each for less alike segments, until one has held all of the best. */
    private void list(ArrayNode mute) {
        for (double guess : GUESSES) {
            double least = best.size() == most ? leastOfBest() : guess;
            read(mute, least);
            if (best.size() == most && leastOfBest() >= least) {
                return;
            }
        }
    }

    /** Reads a list from the top until it ends or nobody behind can be among the best. */
    private void read(ArrayNode mute, double least) {
        int page = Math.max(FIRST_PAGE, most);
        ObjectNode body = body(mute, least);
        JsonNode hits;
        do {
            hits = index.search("", body.put("size", page)).path("hits").path("hits");
            take(hits);
            body.set("search_after", hits.path(hits.size() - 1).path("sort"));
            boolean ended = hits.size() < page;
            page = Math.min(LONGEST_PAGE, page * GROWTH);
            if (ended) {
                return;
            }
        } while (!beaten(hits, least));
    }

    private double leastOfBest() {
        return best.element().likeness();
    }

    /** Whether nobody behind the last of a list can be among the best, or is at least {@code least} alike. */
    private boolean beaten(JsonNode hits, double least) {
        double last = hits.path(hits.size() - 1).path("sort").path(0).doubleValue() * ROUNDING;
        double better = best.size() == most ? Math.max(0, leastOfBest() - least) : 0;
        return last < least * question.weight() + better * question.leastKnownWeight();
    }

    private ObjectNode body(ArrayNode mute, double least) {
        ObjectNode body = Engine.object().put("track_total_hits", false);
        ObjectNode bool = body.putObject("query").putObject("bool");
        ArrayNode filters = bool.putArray("filter");
        filters.addAll(ClusterIndex.filters(filter));
        question.mustBear(least).forEach(words -> {
            ArrayNode any = filters.addObject().putObject("terms").putArray(Layout.MARKS);
            words.forEach(any::add);
        });
        if (!mute.isEmpty()) {
            bool.putArray("must_not").addObject().putObject("terms").set(Layout.KIND, mute);
        }
        ArrayNode marks = bool.putArray("should");
        question.marks(least).forEach(mark -> add(marks, mark.word(), mark.most()));
        question.apart().forEach(mark -> add(marks, mark.word(), mark.most() * least));
        body.set("sort", ClusterIndex.order());
        body.put("_source", false).putArray("docvalue_fields").add(Layout.ORDER).add(Layout.VALUES);
        return body;
    }

    private static void add(ArrayNode marks, String word, double adds) {
        if (adds > 0) {
            marks.addObject()
                    .putObject("term")
                    .putObject(Layout.MARKS)
                    .put("value", word)
                    .put("boost", Math.nextUp((float) adds));
        }
    }

    private void take(JsonNode hits) {
        for (JsonNode hit : hits) {
            JsonNode fields = hit.path("fields");
            long order = fields.path(Layout.ORDER).path(0).longValue();
            if (seen.add(order)) {
                String values = fields.path(Layout.VALUES).path(0).asString("");
                take(new Near(question.likeness(Layout.values(values)), order));
            }
        }
    }

    private void take(Near near) {
        if (best.size() < most) {
            best.add(near);
        } else if (BEST_FIRST.compare(near, best.element()) < 0) {
            best.remove();
            best.add(near);
        }
    }
}
