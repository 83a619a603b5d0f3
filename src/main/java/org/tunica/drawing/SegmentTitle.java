package org.tunica.drawing;

import java.util.Locale;
import org.tunica.plan.SegmentAdvice;

/** A segment by name, its side in full and in capitals. */
final class SegmentTitle {
    private SegmentTitle() {}

    static String of(SegmentAdvice segment) {
        return segment.ref() + ", " + segment.side().word().toUpperCase(Locale.ROOT) + " leg, "
                + segment.vein().word().replace('-', ' ') + ", "
                + segment.level().word().replace('-', ' ');
    }
}
