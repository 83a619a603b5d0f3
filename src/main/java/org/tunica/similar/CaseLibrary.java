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
import org.tunica.physics.Physics;

/** Past segments that can be searched, by how alike they are to one of a case, by words, or both. Safe for several threads. */
public final class CaseLibrary implements AutoCloseable {
    private static final String INDEX = "index";
    private static final int VERSION_DIGITS = 16;

    private final Knowledge knowledge;
    private final CaseSource source;
    private final Profiler profiler;
    private final Similarity similarity;
    private final CaseIndex index;

    private CaseLibrary(Knowledge knowledge, Physics physics, CaseSource source, Optional<Path> folder) {
        this.knowledge = knowledge;
        this.source = source;
        Vocabulary vocabulary = new Vocabulary(knowledge);
        this.profiler = new Profiler(physics, vocabulary);
        this.similarity = new Similarity(knowledge);
        try {
            this.index = folder.isPresent()
                    ? new IndexFolder(folder.get()).open(version(vocabulary), this::fill)
                    : CaseIndex.inMemory(this::fill);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A library whose index is kept nowhere.
     *
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public static CaseLibrary inMemory(CaseSource source, Knowledge knowledge, Physics physics) {
        return new CaseLibrary(knowledge, physics, source, Optional.empty());
    }

    /**
     * The released cases of a case base. Their index is kept beside them, and built when it is lost, damaged or of other cases.
     *
     * @param folder of the case base
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public static CaseLibrary of(Path folder, Knowledge knowledge, Physics physics) {
        CaseLines lines = new CaseLines(folder.resolve(CaseBase.CASES), knowledge);
        return new CaseLibrary(knowledge, physics, lines, Optional.of(folder.resolve(INDEX)));
    }

    /** Different whenever the index would be: cases, columns, words, the way texts are cut, the format of the library. */
    private String version(Vocabulary vocabulary) {
        List<String> parts = new ArrayList<>(
                List.of(source.digest(), "schema " + CaseIndex.SCHEMA, "standard analyzer", Version.LATEST.toString()));
        for (Field field : Field.values()) {
            parts.add(field.word() + vocabulary.of(field));
        }
        // walls are relaxed and closures counted by numbers of knowledge/; weights alone need no other index
        knowledge.quantities().values().stream()
                .filter(number -> !Similarity.IDS.contains(number.id()))
                .forEach(number -> parts.add(number.id() + " " + number.value()));
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
        try {
            return index.invented();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How many past segments it holds. */
    public int size() {
        return index.size();
    }

    /** The past segments most like one of a case; words of the filter narrow, likeness orders. */
    public Found nearest(CaseFile caseFile, Limb limb, Segment segment, SimilarFilter filter, int most) {
        Profile query = profiler.planned(caseFile, limb, segment);
        return found(() -> index.nearest(new Asked(similarity, query), filter, most), Optional.of(query));
    }

    /** The past segments whose notes fit some words best. */
    public Found byWords(String words, SimilarFilter filter, int most) {
        return found(() -> index.byWords(words, filter, most), Optional.empty());
    }

    private interface Search {
        CaseIndex.Places run() throws IOException;
    }

    private Found found(Search search, Optional<Profile> query) {
        try {
            CaseIndex.Places places = search.run();
            List<Hit> hits = places.best().stream().map(at -> hit(at, query)).toList();
            return new Found(hits, places.considered(), places.tooLittleKnown());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Hit hit(CaseIndex.At at, Optional<Profile> query) {
        PastSegment past = PastSegment.of(source.at(at.where()), knowledge).get(at.place());
        Profile profile = profile(past);
        return new Hit(past, query.map(asked -> similarity.of(asked, profile)));
    }

    @Override
    public void close() {
        try {
            index.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
