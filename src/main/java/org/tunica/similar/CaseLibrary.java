package org.tunica.similar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.PastCase;
import org.tunica.physics.Physics;

/** Past segments that can be searched. Immutable and safe for several threads. */
public final class CaseLibrary {
    private final Profiler profiler;
    private final Similarity similarity;
    private final List<Kept> kept = new ArrayList<>();

    private record Kept(PastSegment past, Profile profile) {}

    private CaseLibrary(Knowledge knowledge, Physics physics) {
        this.profiler = new Profiler(physics, new Vocabulary(knowledge));
        this.similarity = new Similarity(knowledge);
    }

    /** A library in memory. */
    public static CaseLibrary inMemory(List<PastCase> pastCases, Knowledge knowledge, Physics physics) {
        CaseLibrary library = new CaseLibrary(knowledge, physics);
        for (PastCase pastCase : pastCases) {
            for (PastSegment past : PastSegment.of(pastCase, knowledge)) {
                library.kept.add(new Kept(past, library.profile(past)));
            }
        }
        return library;
    }

    private Profile profile(PastSegment past) {
        return profiler.treated(past.pastCase().caseFile(), past.limb(), past.segment(), past.delivered());
    }

    /** How many past segments it holds. */
    public int size() {
        return kept.size();
    }

    /** The past segments most like one of a case. */
    public Found nearest(CaseFile caseFile, Limb limb, Segment segment, SimilarFilter filter, int most) {
        return nearest(profiler.planned(caseFile, limb, segment), filter, most);
    }

    Found nearest(Profile query, SimilarFilter filter, int most) {
        List<Kept> considered =
                kept.stream().filter(one -> passes(one.past(), filter)).toList();
        List<Kept> comparable = considered.stream()
                .filter(one -> !similarity.tooLittleKnown(query, one.profile()))
                .toList();
        List<Hit> hits = comparable.stream()
                .sorted(Comparator.comparingDouble((Kept one) -> -similarity.score(query, one.profile()))
                        .thenComparing(one -> one.past().pastCase().id())
                        .thenComparingInt(one -> one.past().place()))
                .limit(most)
                .map(one -> new Hit(one.past(), Optional.of(similarity.of(query, one.profile()))))
                .toList();
        return new Found(hits, considered.size(), considered.size() - comparable.size());
    }

    private static boolean passes(PastSegment past, SimilarFilter filter) {
        PastCase pastCase = past.pastCase();
        return filter.technique().map(past.treated().technique()::equals).orElse(true)
                && filter.outcome()
                        .map(outcome -> past.closed().equals(Optional.of(outcome == SimilarFilter.Outcome.CLOSED)))
                        .orElse(true)
                && filter.invented().map(asked -> asked == pastCase.invented()).orElse(true)
                && filter.site().map(pastCase.site()::equals).orElse(true)
                && filter.words().map(words -> holds(pastCase, words)).orElse(true);
    }

    private static boolean holds(PastCase pastCase, String words) {
        String notes = String.join(" ", pastCase.notes()).toLowerCase(Locale.ROOT);
        return List.of(words.toLowerCase(Locale.ROOT).split("\\s+")).stream().allMatch(notes::contains);
    }
}
