package org.tunica.similar;

import java.util.ArrayList;
import java.util.List;

/** A segment asked about, ready to be put to an index. Immutable. */
public final class Question {
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
     * Every mark a segment may bear that likens it to this one, with the most it can then add to the sum of weights by likeness.
     * A segment bears one for each field known of it, so the sum over its marks is never less than its own sum.
     */
    public List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Field field : similarity.fields()) {
            if (profile.knows(field)) {
                Marks.alike(field, profile, similarity.local(field))
                        .forEach((word, likeness) -> marks.add(new Mark(word, similarity.weight(field) * likeness)));
            }
        }
        return marks;
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
