package org.tunica.invented;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Distribution;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;

/**
 * Makes up what a scan saw of a segment. The way it was treated is known before the width is drawn, from the widths that such
 * a way is chosen for; so the rank of a width among the veins treated alike is even, whatever the choice.
 */
final class Scan {
    private static final double SIX_MM = 6;

    private final Map<Segment.Vein, Widths> lumensMm = new EnumMap<>(Segment.Vein.class);
    private final Map<Segment.Vein, Depths> depthsMm = new EnumMap<>(Segment.Vein.class);
    private final Gaps gapsMm;
    private final Curve wallFactor;
    private final double wallAtSixMm;
    private final double wallGrowth;
    private final Curve refluxSeconds;
    private final Choice<Segment.EarlierTreatment> earlier;
    private final Choice<Segment.EarlierTreatment> earlierOfRecurrence;
    private final Choice<Segment.Measured.Posture> postures;
    private final Distribution spasm;
    private final Distribution unrecorded;

    Scan(Knowledge knowledge) {
        for (Segment.Vein vein : Segment.Vein.values()) {
            lumensMm.put(vein, new Widths(knowledge, vein));
            depthsMm.put(vein, new Depths(knowledge, vein));
        }
        this.gapsMm = new Gaps(knowledge);
        this.wallFactor = Curve.of(knowledge.invented("invented.wall"));
        Distribution expected = knowledge.invented("invented.wall.expected");
        this.wallAtSixMm = expected.number("at-six-mm");
        this.wallGrowth = expected.number("growth");
        this.refluxSeconds = Curve.of(knowledge.invented("invented.reflux"));
        this.earlier = Choice.ofWords(knowledge.invented("invented.earlier"), Segment.EarlierTreatment.class);
        this.earlierOfRecurrence = Choice.ofWords(
                knowledge.invented("invented.earlier.recurrent-channel"), Segment.EarlierTreatment.class);
        this.postures = Choice.ofWords(knowledge.invented("invented.posture"), Segment.Measured.Posture.class);
        this.spasm = knowledge.invented("invented.spasm");
        this.unrecorded = knowledge.invented("invented.unrecorded");
    }

    MadeSegment of(Draw draw, String ref, MadeLeg.Found found, Optional<Technique> technique) {
        double widthRank = draw.fraction();
        double lumenMm = Made.rounded(lumensMm.get(found.vein()).of(technique).at(widthRank), 1);
        double wallRank = draw.fraction();
        double expectedMm = wallAtSixMm * StrictMath.pow(lumenMm / SIX_MM, wallGrowth);
        double wallMm = Made.rounded(expectedMm * wallFactor.at(wallRank), 2);
        return new MadeSegment(
                segment(draw, ref, found, technique.map(Technique::family), lumenMm, wallMm),
                technique,
                found.lengthCm(),
                found.straightCm(),
                lumenMm,
                widthRank,
                wallRank);
    }

    private Segment segment(
            Draw draw, String ref, MadeLeg.Found found, Optional<Family> family, double lumenMm, double wallMm) {
        boolean inSpasm = draw.happens(spasm.number("share"));
        double narrowed = inSpasm ? draw.between(spasm.number("narrowing-low"), spasm.number("narrowing-high")) : 1;
        boolean recurrent = found.vein() == Segment.Vein.RECURRENT_CHANNEL;
        return new Segment(
                ref,
                found.vein(),
                found.level(),
                OptionalDouble.of(found.lengthCm()),
                OptionalDouble.of(found.straightCm()),
                OptionalDouble.of(Made.rounded(lumenMm * narrowed, 1)),
                OptionalDouble.empty(),
                recorded(draw, "wall", Made.rounded(wallMm / narrowed, 2)),
                OptionalDouble.empty(),
                measured(draw, inSpasm, lumenMm),
                recorded(draw, "depth", depthsMm.get(found.vein()).of(draw, family)),
                OptionalDouble.empty(),
                gapsMm.nerve(draw, found, family, unrecorded.number("nerve-gap")),
                recorded(draw, "reflux", Made.rounded(refluxSeconds.from(draw), 1)),
                Optional.of(found.course()),
                Optional.of(found.vein() != Segment.Vein.TRIBUTARY && !recurrent),
                Optional.of(found.thrombus()),
                Optional.of((recurrent ? earlierOfRecurrence : earlier).from(draw)),
                Junctions.distanceCm(found),
                Optional.empty());
    }

    private Segment.Measured measured(Draw draw, boolean inSpasm, double lumenMm) {
        Segment.Measured.Posture posture = postures.from(draw);
        return new Segment.Measured(
                draw.happens(unrecorded.number("posture")) ? Optional.empty() : Optional.of(posture),
                Optional.of(inSpasm),
                inSpasm ? OptionalDouble.of(lumenMm) : OptionalDouble.empty());
    }

    private OptionalDouble recorded(Draw draw, String what, double value) {
        return Made.recorded(draw, unrecorded.number(what), value);
    }
}
