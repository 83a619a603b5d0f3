package org.tunica.similar;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import org.tunica.knowledge.Knowledge;
import org.tunica.pastcases.CaseBase;
import org.tunica.physics.Physics;

/** Past cases as rows for an index elsewhere, by the knowledge of a release. */
public final class SegmentRows {
    private static final int DIGITS = 16;

    private final Knowledge knowledge;
    private final Vocabulary vocabulary;
    private final Profiler profiler;

    /** Rows by a release. */
    public SegmentRows(Knowledge knowledge, Physics physics) {
        this.knowledge = knowledge;
        this.vocabulary = new Vocabulary(knowledge);
        this.profiler = new Profiler(physics, vocabulary);
    }

    /** The released cases of a case base as they stand in its folder. */
    public CaseSource base(Path folder) {
        return new CaseLines(folder.resolve(CaseBase.CASES), knowledge);
    }

    /**
     * Hands over every treated segment of some cases, in the order of the cases.
     *
     * @throws org.tunica.casefile.FaultyInput when a case cannot be read
     */
    public void each(CaseSource source, Consumer<SegmentRow> rows) {
        source.each((where, pastCase) -> PastSegment.of(pastCase, knowledge)
                .forEach(past -> rows.accept(SegmentRow.of(
                        Entry.of(
                                past,
                                where,
                                profiler.treated(pastCase.caseFile(), past.limb(), past.segment(), past.delivered())),
                        pastCase))));
    }

    /**
     * Sixteen digits that differ whenever rows of the same cases would: other columns, words, steps, or numbers of knowledge/
     * by which a wall is relaxed. Other weights alone need no other index.
     */
    public String layout() {
        List<String> parts = new ArrayList<>(layoutParts(knowledge, vocabulary));
        parts.add("marks 2");
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(String.join("\n", parts).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e); // every Java has it
        }
    }

    /** What an index looks like besides its cases. */
    static List<String> layoutParts(Knowledge knowledge, Vocabulary vocabulary) {
        List<String> parts = new ArrayList<>(List.of("schema " + CaseIndex.SCHEMA, "standard analyzer"));
        for (Field field : Field.values()) {
            parts.add(field.word() + vocabulary.of(field));
        }
        // walls are relaxed and closures counted by numbers of knowledge/; weights alone need no other index
        knowledge.quantities().values().stream()
                .filter(number -> !Similarity.IDS.contains(number.id()))
                .forEach(number -> parts.add(number.id() + " " + number.value()));
        return parts;
    }
}
