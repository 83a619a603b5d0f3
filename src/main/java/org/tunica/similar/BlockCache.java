package org.tunica.similar;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReader;

/** The blocks of each part of an index, made once when it is opened and forgotten when its last reader closes. */
final class BlockCache {
    private final Map<IndexReader.CacheKey, Blocks> byPart = new ConcurrentHashMap<>();

    Blocks of(LeafReader reader) throws IOException {
        IndexReader.CacheHelper core = reader.getCoreCacheHelper();
        try {
            return byPart.computeIfAbsent(core.getKey(), key -> {
                core.addClosedListener(byPart::remove);
                return blocks(reader);
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static Blocks blocks(LeafReader reader) {
        try {
            return new Blocks(Columns.of(reader));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    int size() {
        return byPart.size();
    }
}
