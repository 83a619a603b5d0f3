package org.tunica.drawing;

import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import org.tunica.CaseTree;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.SegmentAdvice;

/** The strips of every segment of a demo case, advised by the real engine. */
final class Strips {
    private static final Tunica TUNICA = Tunica.shipped();
    static final Knowledge KNOWLEDGE = TUNICA.knowledge();

    private Strips() {}

    static void each(String demo, BiConsumer<SegmentAdvice, WallStrip> test) {
        each(demo, UnaryOperator.identity(), test);
    }

    static void each(String demo, UnaryOperator<CaseTree> change, BiConsumer<SegmentAdvice, WallStrip> test) {
        CaseFile caseFile =
                TUNICA.readCase(demo, change.apply(CaseTree.demo(demo)).bytes());
        for (SegmentAdvice advice : TUNICA.advise(caseFile).segments()) {
            test.accept(advice, WallStrip.of(advice, segment(caseFile, advice.ref())));
        }
    }

    private static Segment segment(CaseFile caseFile, String ref) {
        return caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream())
                .filter(segment -> segment.ref().equals(ref))
                .findFirst()
                .orElseThrow();
    }
}
