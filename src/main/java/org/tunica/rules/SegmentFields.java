package org.tunica.rules;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;

/** How each field of a segment is answered: what the scan and the history say of it, whatever the technique. */
final class SegmentFields {
    /** The answer for a segment for which nobody has chosen a technique yet. */
    private static final String UNDECIDED = "undecided";

    private final Map<String, Function<Segment, Answer>> answers = new LinkedHashMap<>();

    SegmentFields(Knowledge knowledge) {
        word("segment.vein", segment -> Answer.ofWord(Optional.of(segment.vein())));
        word("segment.level", segment -> Answer.ofWord(Optional.of(segment.level())));
        number("segment.lengthCm", Segment::lengthCm);
        number("segment.straightCm", Segment::straightCm);
        number("segment.lumenDiameterMm", Segment::lumenDiameterMm);
        number("segment.wallThicknessMm", Segment::wallThicknessMm);
        number("segment.depthToSkinMm", Segment::depthToSkinMm);
        number("segment.nerveGapMm", segment -> segment.nerve().gapMm());
        number("segment.refluxSeconds", Segment::refluxSeconds);
        word("segment.course", segment -> Answer.ofWord(segment.course()));
        flag("segment.withinFascia", Segment::withinFascia);
        word("segment.thrombus", segment -> Answer.ofWord(segment.thrombus()));
        word("segment.earlierTreatment", segment -> Answer.ofWord(segment.earlierTreatment()));
        number("segment.topToDeepJunctionCm", Segment::topToDeepJunctionCm);
        flag("segment.inSpasm", segment -> segment.measured().inSpasm());
        word("segment.posture", segment -> Answer.ofWord(segment.measured().posture()));
        word("segment.chosenFamily", segment -> chosenFamily(segment, knowledge));
    }

    /** Every field of a segment, by id, in a fixed order. */
    Map<String, Function<Segment, Answer>> answers() {
        return Collections.unmodifiableMap(answers);
    }

    private static Answer chosenFamily(Segment segment, Knowledge knowledge) {
        return new Answer.OneWord(segment.chosen()
                .map(id -> knowledge.techniques().get(id).family().word())
                .orElse(UNDECIDED));
    }

    private void number(String id, Function<Segment, OptionalDouble> read) {
        answers.put(id, segment -> Answer.of(read.apply(segment)));
    }

    private void flag(String id, Function<Segment, Optional<Boolean>> read) {
        answers.put(id, segment -> Answer.ofFlag(read.apply(segment)));
    }

    private void word(String id, Function<Segment, Answer> read) {
        answers.put(id, read);
    }
}
