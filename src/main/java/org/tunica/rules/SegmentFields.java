package org.tunica.rules;

import java.util.Optional;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/** How each field of a segment is answered: what the scan and the history say of it, whatever the technique. */
final class SegmentFields {
    /** The answer for a segment for which nobody has chosen a technique yet. */
    private static final String UNDECIDED = "undecided";

    private final AnswerTable<Segment> table = new AnswerTable<>();

    SegmentFields(Knowledge knowledge) {
        table.word("segment.vein", segment -> Answer.ofWord(Optional.of(segment.vein())));
        table.word("segment.level", segment -> Answer.ofWord(Optional.of(segment.level())));
        table.number("segment.lengthCm", Segment::lengthCm);
        table.number("segment.straightCm", Segment::straightCm);
        table.number("segment.lumenDiameterMm", Segment::lumenDiameterMm);
        table.number("segment.wallThicknessMm", Segment::wallThicknessMm);
        table.number("segment.depthToSkinMm", Segment::depthToSkinMm);
        table.number("segment.nerveGapMm", segment -> segment.nerve().gapMm());
        table.number("segment.refluxSeconds", Segment::refluxSeconds);
        table.word("segment.course", segment -> Answer.ofWord(segment.course()));
        table.flag("segment.withinFascia", Segment::withinFascia);
        table.word("segment.thrombus", segment -> Answer.ofWord(segment.thrombus()));
        table.word("segment.earlierTreatment", segment -> Answer.ofWord(segment.earlierTreatment()));
        table.number("segment.topToDeepJunctionCm", Segment::topToDeepJunctionCm);
        table.flag("segment.inSpasm", segment -> segment.measured().inSpasm());
        table.word(
                "segment.posture", segment -> Answer.ofWord(segment.measured().posture()));
        table.word("segment.chosenFamily", segment -> chosenFamily(segment, knowledge));
    }

    AnswerTable<Segment> table() {
        return table;
    }

    private static Answer chosenFamily(Segment segment, Knowledge knowledge) {
        return new Answer.OneWord(segment.chosen()
                .map(id -> knowledge.techniques().get(id).family().word())
                .orElse(UNDECIDED));
    }
}
