package org.tunica.workroom;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tunica.Tunica;
import org.tunica.knowledge.Bundle;
import org.tunica.review.RuleReview;

/** Bundles that were loaded a moment ago: an author looks at the same rules many times. Safe for several threads. */
public final class Reviews {
    private static final int KEPT = 4;

    private final Map<String, Tunica> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Tunica> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * A bundle, loaded; every output of it says DRAFT.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault of its files
     */
    public Tunica loaded(Bundle bundle) {
        String digest = bundle.digest();
        synchronized (kept) {
            Tunica known = kept.get(digest);
            if (known != null) {
                return known;
            }
        }
        Tunica fresh = Tunica.of(bundle);
        synchronized (kept) {
            kept.put(digest, fresh);
        }
        return fresh;
    }

    /** What a reviewer can ask of it. */
    public RuleReview of(Bundle bundle) {
        return loaded(bundle).review();
    }
}
