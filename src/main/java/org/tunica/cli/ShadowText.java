package org.tunica.cli;

import java.util.Map;
import java.util.stream.Collectors;
import org.tunica.releases.ShadowRun;
import org.tunica.replay.ChangedSegment;

/** What was counted of a shadow, as text. */
final class ShadowText {
    private ShadowText() {}

    static String of(String version, ShadowRun.Counts counts) {
        StringBuilder out = new StringBuilder("Release " + version + " ran silently beside " + counts.runs()
                + (counts.runs() == 1 ? " advice" : " advices") + "; in " + counts.casesChanged()
                + " it would have said something else, in " + counts.failures() + " it failed.\n");
        out.append("Segments that would come out otherwise: ")
                .append(kinds(counts.segmentsByKind()))
                .append(".\n");
        counts.segmentsByRule()
                .forEach((rule, kinds) -> out.append("  ")
                        .append(rule)
                        .append(": ")
                        .append(kinds(kinds))
                        .append('\n'));
        return out.toString();
    }

    private static String kinds(Map<ChangedSegment.Kind, Integer> kinds) {
        return kinds.isEmpty()
                ? "none"
                : kinds.entrySet().stream()
                        .map(kind -> kind.getKey().word().replace('-', ' ') + " " + kind.getValue())
                        .collect(Collectors.joining(", "));
    }
}
