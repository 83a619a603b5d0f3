package org.tunica.cluster;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.tunica.similar.Question;
import org.tunica.similar.SegmentIndex;
import org.tunica.similar.SimilarFilter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Finds the segments most like a question exactly. The engine lists segments by the sum of what their marks can add at most;
 * likeness is that sum over the weight known of both, so segments of which the same weight is known are listed together. What is
 * listed is compared exactly, and more is fetched until what was listed last could, at best, no longer be among the best.
 */
final class ClusterSearch {
    private static final Comparator<Near> BEST_FIRST =
            Comparator.comparingDouble((Near near) -> -near.likeness()).thenComparingLong(Near::order);

    private static final int FIRST_PAGE = 60;
    private static final int LONGEST_PAGE = 4_000;
    private static final int GROWTH = 4;
    private static final int MOST_KINDS = 65_000;

    /** The engine sums in numbers of seven digits; a bound must not be missed for want of the eighth. */
    private static final double ROUNDING = 1 + 1e-5;

    private final ClusterIndex index;
    private final Question question;
    private final SimilarFilter filter;
    private final int most;
    private final ArrayNode marks;
    private final PriorityQueue<Near> best = new PriorityQueue<>(BEST_FIRST.reversed());

    /** A segment and how alike it is. */
    private record Near(double likeness, long order) {}

    /** Segments of which the same weight is known, as far as they were listed. */
    private static final class Group {
        private final double weight;
        private final List<String> kinds = new ArrayList<>();
        private int page = FIRST_PAGE;
        private boolean done;
        private ArrayNode after = Engine.object().putArray("after");

        Group(double weight) {
            this.weight = weight;
        }
    }

    ClusterSearch(ClusterIndex index, Question question, SimilarFilter filter, int most) {
        this.index = index;
        this.question = question;
        this.filter = filter;
        this.most = most;
        this.marks = Engine.object().putArray("should");
        for (Question.Mark mark : question.marks()) {
            if (mark.most() > 0) {
                marks.addObject()
                        .putObject("term")
                        .putObject(Layout.MARKS)
                        .put("value", mark.word())
                        .put("boost", Math.nextUp((float) mark.most()));
            }
        }
    }

    SegmentIndex.Places run() {
        int considered = 0;
        int tooLittle = 0;
        Map<Double, Group> groups = new TreeMap<>(Comparator.reverseOrder());
        for (JsonNode kind : kinds()) {
            int count = kind.path("doc_count").intValue();
            Question.Common common = question.common(kind.path("key").asString(""));
            considered += count;
            if (common.tooLittle()) {
                tooLittle += count;
            } else {
                groups.computeIfAbsent(common.weight(), Group::new)
                        .kinds
                        .add(kind.path("key").asString(""));
            }
        }
        list(List.copyOf(groups.values()));
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

    private void list(List<Group> groups) {
        List<Group> open = groups;
        while (!open.isEmpty()) {
            List<JsonNode> pages = index.search(open.stream().map(this::page).toList());
            for (int i = 0; i < open.size(); i++) {
                take(open.get(i), pages.get(i).path("hits").path("hits"));
            }
            // what one group lists may show that another, listed before it in the same turn, is done
            open.forEach(this::closeWhenBeaten);
            open = open.stream().filter(group -> !group.done).toList();
        }
    }

    private ObjectNode page(Group group) {
        ObjectNode body =
                Engine.object().put("size", Math.max(group.page, most)).put("track_total_hits", false);
        ObjectNode bool = body.putObject("query").putObject("bool");
        ArrayNode filters = ClusterIndex.filters(filter);
        ArrayNode kinds = filters.addObject().putObject("terms").putArray(Layout.KIND);
        group.kinds.forEach(kinds::add);
        bool.set("filter", filters);
        bool.set("should", marks);
        body.set("sort", ClusterIndex.order());
        if (!group.after.isEmpty()) {
            body.set("search_after", group.after);
        }
        body.putArray("_source").add(Layout.ORDER).add(Layout.VALUES);
        return body;
    }

    private void take(Group group, JsonNode hits) {
        for (JsonNode hit : hits) {
            List<Integer> values = new ArrayList<>();
            hit.path("_source").path(Layout.VALUES).forEach(value -> values.add(value.intValue()));
            add(new Near(
                    question.likeness(values),
                    hit.path("_source").path(Layout.ORDER).longValue()));
        }
        if (hits.size() < Math.max(group.page, most)) {
            group.done = true;
        } else {
            group.after = (ArrayNode) hits.path(hits.size() - 1).path("sort");
            group.page = Math.min(LONGEST_PAGE, group.page * GROWTH);
        }
    }

    private void closeWhenBeaten(Group group) {
        if (!group.done && best.size() == most) {
            double atBest = group.after.path(0).doubleValue() * ROUNDING / group.weight;
            group.done = atBest < best.element().likeness();
        }
    }

    private void add(Near near) {
        if (best.size() < most) {
            best.add(near);
        } else if (BEST_FIRST.compare(near, best.element()) < 0) {
            best.remove();
            best.add(near);
        }
    }
}
