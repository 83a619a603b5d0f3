package org.tunica.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;

/**
 * Past segments that are most like one of a case. They inform people; no ranking is changed by them.
 *
 * @param says what they are worth and what they are not
 * @param considered how many past segments were looked at
 * @param tooLittleKnown how many of them have too little in common with it to say how alike they are; they are not listed
 * @param nearest the most alike first
 * @param happened what happened to more of the nearest than are listed, in words, technique by technique
 */
public record SimilarAdvice(
        String says, int considered, int tooLittleKnown, List<Nearest> nearest, List<String> happened) {
    /** What must stand beside every list of past cases. */
    public static final String SAYS =
            "Past cases inform and change no ranking. They were chosen by how alike they are, not by"
                    + " chance, and their techniques were chosen by people: how they went does not tell how another technique would"
                    + " have gone.";

    public SimilarAdvice {
        nearest = List.copyOf(nearest);
        happened = List.copyOf(happened);
    }

    /**
     * One past segment.
     *
     * @param pastCase random id of its case
     * @param ref name of the segment in it
     * @param invented whether it was made up
     * @param similarity mean likeness by weight over what is known of both, 0 to 1; absent when only words were searched
     * @param knownShare share of the weight of all attributes that is known of both, 0 to 1; absent likewise
     * @param relaxedWallMm standing and out of spasm, as are all
     * @param technique id of the technique used
     * @param settings as they were used, in words; a linear energy never without its power and pullback
     * @param happened how it went, in words
     * @param why what each attribute gives, heaviest first
     * @param notCompared attributes not known of both, in words
     */
    public record Nearest(
            String pastCase,
            String ref,
            boolean invented,
            OptionalDouble similarity,
            OptionalDouble knownShare,
            Limb.Side side,
            Segment.Vein vein,
            Segment.Level level,
            OptionalDouble relaxedWallMm,
            OptionalDouble relaxedLumenMm,
            OptionalDouble nerveGapMm,
            String technique,
            String settings,
            String happened,
            List<Why> why,
            List<String> notCompared) {
        public Nearest {
            why = List.copyOf(why);
            notCompared = List.copyOf(notCompared);
        }
    }

    /**
     * What one attribute gives.
     *
     * @param here of the segment asked about
     * @param there of the past one
     * @param alike likeness of the two values, 0 to 1
     * @param weight of the attribute among the others
     * @param points what it adds to the similarity
     */
    public record Why(String attribute, String here, String there, double alike, double weight, double points) {}
}
