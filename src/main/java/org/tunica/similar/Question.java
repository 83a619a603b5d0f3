package org.tunica.similar;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A segment asked about, ready to be put to an index. Immutable. */
public final class Question {
    private static final double HAIR = 1e-9;

    private final Similarity similarity;
    private final Profile profile;

    Question(Similarity similarity, Profile profile) {
        this.similarity = similarity;
        this.profile = profile;
    }

    /** The same for an index that holds its segments block by block. */
    Asked asked() {
        return new Asked(similarity, profile);
    }

    Profile profile() {
        return profile;
    }

    /** The weight of all that is known here, which is the most that can be known of both. */
    public double weight() {
        double weight = 0;
        for (Field field : similarity.fields()) {
            weight += profile.knows(field) ? similarity.weight(field) : 0;
        }
        return weight;
    }

    /**
     * Every mark of segments that have nothing to compare with this one in some field, with the weight of that field. A segment
     * bears one of them for each field known here and not there.
     */
    public List<Mark> apart() {
        List<Mark> marks = new ArrayList<>();
        for (Field field : similarity.fields()) {
            if (profile.knows(field)) {
                Marks.apart(field, profile).forEach(word -> marks.add(new Mark(word, similarity.weight(field))));
            }
        }
        return marks;
    }

    /**
     * Every mark that segments at least so alike may bear and that likens them to this one, with the most it can then add to the
     * sum of weights by likeness. A segment bears one for each field known of it, so the sum over its marks is never less than
     * its own sum.
     *
     * @param least likeness, from 0 to 1
     */
    public List<Mark> marks(double least) {
        List<Mark> marks = new ArrayList<>();
        for (Field field : similarity.fields()) {
            if (profile.knows(field)) {
                alike(field, least)
                        .forEach((word, likeness) -> marks.add(new Mark(word, similarity.weight(field) * likeness)));
            }
        }
        return marks;
    }

    /** The least weight known of both of any segment that may be told how alike it is. */
    public double leastKnownWeight() {
        return similarity.leastKnownWeight(profile);
    }

    /**
     * For each field that counts enough: the marks of which a segment bears one if it is at least so alike. One field alone
     * can cost it no more than what it may lack of the whole,
     *
     * <pre>
     *   w_i (1 - s_i) <= (1 - least) K <= (1 - least) K0,
     * </pre>
     *
     * with {@code K} the weight known of both and {@code K0} that known here; where nothing can be compared it costs nothing.
     *
     * @param least likeness, from 0 to 1
     */
    public List<List<String>> mustBear(double least) {
        return similarity.fields().stream()
                .filter(field -> profile.knows(field) && leastLocal(field, least) > 0)
                .map(field -> Stream.concat(Marks.apart(field, profile).stream(), alike(field, least).keySet().stream())
                        .toList())
                .toList();
    }

    private Map<String, Double> alike(Field field, double least) {
        double leastLocal = leastLocal(field, least);
        Map<String, Double> alike = Marks.alike(field, profile, similarity.local(field));
        alike.values().removeIf(likeness -> likeness < leastLocal);
        return alike;
    }

    /** How alike a field is at least, if all of the segment is; none where it is not above 0. */
    private double leastLocal(Field field, double least) {
        return 1 - ((1 - least) * weight() + HAIR) / similarity.weight(field);
    }

    /**
     * Whether so little of segments of a kind is known in common with this one that it must not be told how alike they are.
     *
     * @param kind as {@link SegmentRow#kind()} has it
     */
    public boolean tooLittle(String kind) {
        Kind other = Kind.of(kind);
        double known = 0;
        for (Field field : similarity.fields()) {
            known += profile.knows(field) && other.comparable(field, profile) ? similarity.weight(field) : 0;
        }
        return known < similarity.leastKnownWeight(profile) || known == 0;
    }

    /**
     * How alike a segment is, from 0 to 1, the same to the last digit as in every other index.
     *
     * @param values of the segment, as {@link SegmentRow#values()} has them
     */
    public double likeness(List<Integer> values) {
        return similarity.score(profile, Profile.of(values));
    }

    /**
     * A mark and what it may add.
     *
     * @param word of the mark
     * @param most that it adds
     */
    public record Mark(String word, double most) {}
}
