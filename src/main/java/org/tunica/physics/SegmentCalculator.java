package org.tunica.physics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Segment.Measured.Posture;
import org.tunica.knowledge.Knowledge;

/** Computes {@link SegmentNumbers} from what was measured. */
final class SegmentCalculator {
    /** The published median fall of the diameter from standing to lying. */
    static final String POSTURAL_CHANGE = "posture.standing-to-lying";

    private final Knowledge knowledge;

    SegmentCalculator(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    SegmentNumbers numbers(CaseFile caseFile, Segment segment) {
        Optional<WallGeometry> wall = wall(segment);
        OptionalDouble relaxedLumen = Maybe.positive(relaxedLumenMm(segment));
        OptionalDouble length = Maybe.positive(segment.lengthCm());
        return new SegmentNumbers(
                wall,
                relaxedLumen,
                relaxedLumen.isPresent() && posture(segment) == Posture.LYING,
                relaxedWallMm(segment, wall, relaxedLumen),
                wall.isPresent()
                        ? OptionalDouble.of(wall.get().collapsedOuterDiameterMm() / 2)
                        : OptionalDouble.empty(),
                Maybe.both(relaxedLumen, length, Lumen::volumeMl),
                wall.isPresent() ? Maybe.map(length, wall.get()::wallVolumeMl) : OptionalDouble.empty(),
                Maybe.and(
                        caseFile.patient().canLie().headDown(), caseFile.room().tiltTable()));
    }

    /** The area of the wall is the same in spasm and relaxed, so it needs no more than lumen and wall of one state. */
    private static Optional<WallGeometry> wall(Segment segment) {
        OptionalDouble lumen = Maybe.positive(segment.lumenDiameterMm());
        OptionalDouble thickness = Maybe.positive(segment.wallThicknessMm());
        return lumen.isPresent() && thickness.isPresent()
                ? Optional.of(WallGeometry.ofLumen(lumen.getAsDouble(), thickness.getAsDouble()))
                : Optional.empty();
    }

    /** A wall measured relaxed is taken as measured: converting it there and back would round it off its limit. */
    private static OptionalDouble relaxedWallMm(
            Segment segment, Optional<WallGeometry> wall, OptionalDouble relaxedLumen) {
        if (wall.isEmpty()) {
            return OptionalDouble.empty();
        }
        return relaxedLumen.equals(segment.lumenDiameterMm())
                ? segment.wallThicknessMm()
                : Maybe.map(relaxedLumen, lumen -> wall.get().wallAtLumenMm(lumen));
    }

    private OptionalDouble relaxedLumenMm(Segment segment) {
        Optional<Boolean> inSpasm = segment.measured().inSpasm();
        if (inSpasm.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble relaxed =
                inSpasm.get() ? segment.measured().relaxedLumenDiameterMm() : segment.lumenDiameterMm();
        return standing(relaxed, segment);
    }

    /** Rules speak of the standing vein; a lying one is brought upright by the published median, others stay unknown. */
    private OptionalDouble standing(OptionalDouble lumenMm, Segment segment) {
        if (segment.measured().posture().isEmpty() || lumenMm.isEmpty() || lumenMm.getAsDouble() <= 0) {
            return OptionalDouble.empty();
        }
        return switch (posture(segment)) {
            case STANDING -> lumenMm;
            case LYING -> Maybe.map(lumenMm, mm -> Lumen.standingMm(mm, knowledge.value(POSTURAL_CHANGE)));
            case SITTING, HEAD_DOWN -> OptionalDouble.empty();
        };
    }

    private static Posture posture(Segment segment) {
        return segment.measured().posture().orElse(Posture.HEAD_DOWN);
    }
}
