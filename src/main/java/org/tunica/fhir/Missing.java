package org.tunica.fhir;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tunica.knowledge.Glossary;
import org.tunica.plan.Advice;
import org.tunica.plan.FirmnessAdvice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;

/**
 * Something that is not recorded and keeps techniques from being judged.
 *
 * @param segment the advice of the segment it is about
 * @param noun what it is, in words
 * @param measure under which it would be read from a record, where it is one
 * @param waiting how many techniques wait for it
 */
record Missing(SegmentAdvice segment, String noun, Optional<Measure> measure, int waiting) {
    /** Fields of the glossary that stand deeper in a case. */
    private static final Map<String, String> DEEPER = Map.of(
            "nerveGapMm", "nerve.gapMm",
            "posture", "measured.posture",
            "inSpasm", "measured.inSpasm",
            "canLieHeadDown", "canLie.headDown",
            "canLieFlat", "canLie.flat",
            "canLieProne", "canLie.prone");

    /** What techniques of an advice wait for, segment by segment, the most promising first. */
    static List<Missing> of(Advice advice, Glossary glossary) {
        return advice.segments().stream()
                .flatMap(segment -> of(segment, glossary).stream())
                .toList();
    }

    static List<Missing> of(SegmentAdvice segment, Glossary glossary) {
        List<String> inTheRoom = segment.options().stream()
                .filter(option -> option.standing() == OptionStanding.MEASURE_FIRST)
                .map(OptionAdvice::technique)
                .toList();
        return segment.firmness().map(FirmnessAdvice::measureNext).orElse(List.of()).stream()
                .map(next -> new Missing(segment, next.noun(), measure(next.noun(), glossary), (int)
                        next.waiting().stream().filter(inTheRoom::contains).count()))
                .filter(missing -> missing.waiting() > 0)
                .toList();
    }

    /** Whether nothing can be ranked for a segment before something is recorded. */
    static boolean stops(SegmentAdvice segment) {
        return segment.options().stream().noneMatch(option -> option.standing().ranked())
                && segment.options().stream().anyMatch(option -> option.standing() == OptionStanding.MEASURE_FIRST);
    }

    private static Optional<Measure> measure(String noun, Glossary glossary) {
        return glossary.fields().values().stream()
                .filter(field -> field.noun().equals(noun))
                .findFirst()
                .flatMap(field -> measure(field.id()));
    }

    private static Optional<Measure> measure(String field) {
        int dot = field.indexOf('.');
        String path = field.substring(dot + 1);
        String deeper = DEEPER.getOrDefault(path, path);
        return switch (field.substring(0, dot)) {
            case "patient" -> Measure.at(Measure.About.PATIENT, deeper);
            case "limb" -> Measure.at(Measure.About.LIMB, deeper);
            case "segment" -> Measure.at(Measure.About.SEGMENT, deeper);
            default -> Optional.empty();
        };
    }
}
