package org.tunica.releases;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.replay.ChangedSegment;
import org.tunica.replay.Comparison;
import org.tunica.replay.Turn;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a shadow would have said otherwise in one advice. It tells nothing of the case, not even its reference.
 *
 * @param failed the kind of failure that kept the shadow from an answer
 * @param changed what of each segment that came out otherwise is another, and the rules that turned
 */
public record ShadowRun(Optional<String> failed, List<Changed> changed) {
    private static final String FAILED = "failed";
    private static final String CHANGED = "changed";
    private static final String KINDS = "kinds";
    private static final String RULES = "rules";

    public ShadowRun {
        changed = List.copyOf(changed);
    }

    /** One segment that came out otherwise. */
    public record Changed(Set<ChangedSegment.Kind> kinds, Set<String> rules) {
        public Changed {
            kinds = Set.copyOf(kinds);
            rules = Set.copyOf(rules);
        }
    }

    static ShadowRun of(Comparison comparison) {
        return new ShadowRun(
                Optional.empty(),
                comparison.changed().stream()
                        .map(segment -> new Changed(
                                Set.copyOf(segment.kinds()),
                                new TreeSet<>(
                                        segment.turns().stream().map(Turn::rule).toList())))
                        .toList());
    }

    static ShadowRun failed(Throwable failure) {
        return new ShadowRun(Optional.of(failure.getClass().getSimpleName()), List.of());
    }

    String toJson() {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        failed.ifPresent(kind -> tree.put(FAILED, kind));
        ArrayNode all = tree.putArray(CHANGED);
        for (Changed segment : changed) {
            ObjectNode one = all.addObject();
            ArrayNode kinds = one.putArray(KINDS);
            segment.kinds().stream().sorted().forEach(kind -> kinds.add(kind.word()));
            ArrayNode rules = one.putArray(RULES);
            segment.rules().stream().sorted().forEach(rules::add);
        }
        return tree.toString();
    }

    static ShadowRun read(String json) {
        Faults faults = new Faults();
        String what = "run of a shadow";
        FieldReader reader = new FieldReader(JsonText.parse(what, json.getBytes(StandardCharsets.UTF_8)), "$", faults);
        ShadowRun run = new ShadowRun(
                reader.text(FAILED),
                reader.objects(CHANGED).orElse(List.of()).stream()
                        .map(one -> new Changed(
                                one.words(KINDS, ChangedSegment.Kind.class).orElse(Set.of()),
                                Set.copyOf(one.texts(RULES))))
                        .toList());
        faults.throwIfAny(what);
        return run;
    }

    /**
     * Many runs counted.
     *
     * @param casesChanged in how many something came out otherwise
     * @param segmentsByKind how many segments came out otherwise, by what of them is another
     * @param segmentsByRule the same by the rule that turned; a segment counts for each of its rules
     */
    public record Counts(
            int runs,
            int failures,
            int casesChanged,
            Map<ChangedSegment.Kind, Integer> segmentsByKind,
            Map<String, Map<ChangedSegment.Kind, Integer>> segmentsByRule) {

        static Counts of(List<ShadowRun> runs) {
            Map<ChangedSegment.Kind, Integer> byKind = new TreeMap<>();
            Map<String, Map<ChangedSegment.Kind, Integer>> byRule = new TreeMap<>();
            runs.stream()
                    .flatMap(run -> run.changed().stream())
                    .forEach(segment -> segment.kinds().forEach(kind -> {
                        byKind.merge(kind, 1, Integer::sum);
                        segment.rules()
                                .forEach(rule -> byRule.computeIfAbsent(rule, id -> new TreeMap<>())
                                        .merge(kind, 1, Integer::sum));
                    }));
            int failures =
                    (int) runs.stream().filter(run -> run.failed().isPresent()).count();
            int changed =
                    (int) runs.stream().filter(run -> !run.changed().isEmpty()).count();
            return new Counts(runs.size(), failures, changed, byKind, byRule);
        }
    }
}
