package org.tunica.casefile;

import java.util.OptionalDouble;

/** Contradictions between the fields of one segment, which no single range can see. */
final class SegmentChecks {
    private SegmentChecks() {}

    static void check(Segment segment, FieldReader reader) {
        straightWithinLength(segment, reader);
        wallWithinLumen(segment, reader);
        relaxedWiderThanSpasm(segment, reader);
    }

    private static void straightWithinLength(Segment segment, FieldReader reader) {
        if (exceeds(segment.straightCm(), segment.lengthCm())) {
            reader.fault("straightCm", "the straight part cannot be longer than lengthCm");
        }
    }

    /** A wall thicker than its lumen is a typing error (for example mm/10); it would also upset the area formula. */
    private static void wallWithinLumen(Segment segment, FieldReader reader) {
        boolean mayBeInSpasm = segment.measured().inSpasm().orElse(true);
        if (!mayBeInSpasm && exceeds(segment.wallThicknessMm(), segment.lumenDiameterMm())) {
            reader.fault("wallThicknessMm", "the wall cannot be thicker than the open lumen is wide");
        }
    }

    private static void relaxedWiderThanSpasm(Segment segment, FieldReader reader) {
        if (segment.measured().inSpasm().orElse(false)
                && exceeds(segment.lumenDiameterMm(), segment.measured().relaxedLumenDiameterMm())) {
            reader.fault(
                    "measured.relaxedLumenDiameterMm", "a relaxed vein cannot be narrower than the same vein in spasm");
        }
    }

    private static boolean exceeds(OptionalDouble a, OptionalDouble b) {
        return a.isPresent() && b.isPresent() && a.getAsDouble() > b.getAsDouble();
    }
}
