package org.tunica.proposal;

import com.github.difflib.DiffUtils;
import com.github.difflib.UnifiedDiffUtils;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeSet;

/** Two sets of texts held against each other line by line, in the unified form that every tool reads. */
final class LineChanges {
    /** Lines shown around each change. */
    private static final int AROUND = 3;

    private static final String NONE = "/dev/null";

    private LineChanges() {}

    static String between(SortedMap<String, String> before, SortedMap<String, String> after) {
        TreeSet<String> paths = new TreeSet<>(before.keySet());
        paths.addAll(after.keySet());
        StringBuilder all = new StringBuilder();
        for (String path : paths) {
            String was = before.getOrDefault(path, "");
            String is = after.getOrDefault(path, "");
            if (!was.equals(is)) {
                unified(
                                before.containsKey(path) ? "before/" + path : NONE,
                                after.containsKey(path) ? path : NONE,
                                lines(was),
                                lines(is))
                        .forEach(line -> all.append(line).append('\n'));
            }
        }
        return all.toString();
    }

    private static List<String> unified(String nameBefore, String nameAfter, List<String> was, List<String> is) {
        return UnifiedDiffUtils.generateUnifiedDiff(nameBefore, nameAfter, was, DiffUtils.diff(was, is), AROUND);
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }
}
