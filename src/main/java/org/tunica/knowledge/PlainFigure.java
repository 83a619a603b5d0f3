package org.tunica.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;

/**
 * How often something good or bad was seen, for patients.
 *
 * @param ways ids of the ways it was seen with
 * @param techniques ids of the techniques it holds for; empty for all of the ways
 * @param veins the veins it holds for; empty for any
 * @param says what was seen, to follow "in about 8 of 100 people"
 * @param percent the published rate, or that of the published events
 * @param low and {@code high}: interval of the source, or the lowest and highest when there is no rate, per cent
 * @param horizon how much later
 * @param among what was counted
 * @param definition what the source counted, and the denominator
 * @param row of the evidence it stands in
 */
public record PlainFigure(
        String id,
        Kind kind,
        List<String> ways,
        List<String> techniques,
        Set<Segment.Vein> veins,
        String says,
        OptionalDouble percent,
        OptionalDouble low,
        OptionalDouble high,
        Optional<String> horizon,
        Among among,
        String definition,
        String row,
        String source,
        Standing standing,
        String change) {

    /** Whether it holds for a vein. */
    public boolean holdsFor(Segment.Vein vein) {
        return veins.isEmpty() || veins.contains(vein);
    }

    /** Good or bad. */
    public enum Kind implements Word {
        BENEFIT,
        HARM
    }

    /** What a study counted. */
    public enum Among implements Word {
        PEOPLE,
        LEGS,
        VEINS,
        TREATMENTS
    }
}
