package org.tunica.similar;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.lucene.util.Version;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.CaseBase;
import org.tunica.pastcases.PastCase;
import org.tunica.physics.Physics;

/** Past segments that can be searched, by how alike they are to one of a case, by words, or both. Safe for several threads. */
public final class CaseLibrary implements AutoCloseable {
    private static final String INDEX = "index";
    private static final int VERSION_DIGITS = 16;

    private final Knowledge knowledge;
    private final CaseSource source;
    private final Profiler profiler;
    private final Similarity similarity;
    private final SegmentIndex index;

    private CaseLibrary(Knowledge knowledge, Physics physics, CaseSource source, Opening opening) {
        this.knowledge = knowledge;
        this.source = source;
        Vocabulary vocabulary = new Vocabulary(knowledge);
        this.profiler = new Profiler(physics, vocabulary);
        this.similarity = new Similarity(knowledge);
        try {
            this.index = opening.open(version(vocabulary), this::fill);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Opening {
        SegmentIndex open(String version, CaseIndex.Filling filling) throws IOException;
    }

    /**
     * A library whose index is kept nowhere.
     *
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public static CaseLibrary inMemory(CaseSource source, Knowledge knowledge, Physics physics) {
        return new CaseLibrary(knowledge, physics, source, (version, filling) -> CaseIndex.inMemory(filling));
    }

    /**
     * The released cases of a case base. Their index is kept beside them, and built when it is lost, damaged or of other cases.
     *
     * @param folder of the case base
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public static CaseLibrary of(Path folder, Knowledge knowledge, Physics physics) {
        CaseLines lines = new CaseLines(folder.resolve(CaseBase.CASES), knowledge);
        IndexFolder indexes = new IndexFolder(folder.resolve(INDEX));
        return new CaseLibrary(knowledge, physics, lines, indexes::open);
    }

    /**
     * Cases whose index stands elsewhere; it is closed with the library.
     *
     * @param source asked for a case by its {@link SegmentRow#caseNumber()}
     */
    public static CaseLibrary over(SegmentIndex index, CaseSource source, Knowledge knowledge, Physics physics) {
        return new CaseLibrary(knowledge, physics, source, (version, filling) -> index);
    }

    /** Different whenever the index would be: cases, columns, words, the way texts are cut, the format of the library. */
    private String version(Vocabulary vocabulary) {
        List<String> parts = new ArrayList<>(List.of(source.digest(), Version.LATEST.toString()));
        parts.addAll(SegmentRows.layoutParts(knowledge, vocabulary));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(String.join("\n", parts).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, VERSION_DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    private void fill(Consumer<Entry> entries) {
        source.each((where, pastCase) -> PastSegment.of(pastCase, knowledge)
                .forEach(past -> entries.accept(Entry.of(past, where, profile(past)))));
    }

    private Profile profile(PastSegment past) {
        return profiler.treated(past.pastCase().caseFile(), past.limb(), past.segment(), past.delivered());
    }

    /** Whether any of its cases is made up. */
    public boolean invented() {
        return source.invented() || inventedSegments() > 0;
    }

    /** What it is, in words; what is made up of it says so. */
    public String says() {
        int madeUp = inventedSegments();
        return source.invented() || madeUp == 0
                ? source.says()
                : String.format(
                        Locale.ROOT,
                        "INVENTED are %,d of the %,d treated segments searched; they prove nothing. %s",
                        madeUp,
                        size(),
                        source.says());
    }

    private int inventedSegments() {
        return index.invented();
    }

    /** How many past segments it holds. */
    public int size() {
        return index.size();
    }

    /** The past segments most like one of a case; words of the filter narrow, likeness orders. */
    public Found nearest(CaseFile caseFile, Limb limb, Segment segment, SimilarFilter filter, int most) {
        Profile query = profiler.planned(caseFile, limb, segment);
        return found(index.nearest(new Question(similarity, query), filter, most), Optional.of(query));
    }

    /** The past segments whose notes fit some words best. */
    public Found byWords(String words, SimilarFilter filter, int most) {
        return found(index.byWords(words, filter, most), Optional.empty());
    }

    private Found found(SegmentIndex.Places places, Optional<Profile> query) {
        List<PastCase> cases =
                source.at(places.best().stream().map(SegmentIndex.At::where).toList());
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            PastSegment past = PastSegment.of(cases.get(i), knowledge)
                    .get(places.best().get(i).place());
            Profile profile = profile(past);
            hits.add(new Hit(past, query.map(asked -> similarity.of(asked, profile))));
        }
        return new Found(hits, places.considered(), places.tooLittleKnown());
    }

    @Override
    public void close() {
        index.close();
    }
}
