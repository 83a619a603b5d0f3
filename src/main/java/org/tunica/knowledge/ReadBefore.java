package org.tunica.knowledge;

import java.lang.ref.SoftReference;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * Trees of texts without a fault that were read before. Two releases share nearly all their files, and a process that
 * compares or changes releases reads them over and over; half of the time it takes to set rules up goes into that. The
 * trees are read and never changed. They may be forgotten when memory is short.
 */
final class ReadBefore {
    private static final int MOST = 300;

    private final Map<String, SoftReference<JsonNode>> trees = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, SoftReference<JsonNode>> eldest) {
            return size() > MOST;
        }
    };

    synchronized Optional<JsonNode> tree(String text) {
        return Optional.ofNullable(trees.get(text)).map(SoftReference::get);
    }

    synchronized void keep(String text, JsonNode tree) {
        trees.put(text, new SoftReference<>(tree));
    }
}
