package org.tunica.similar;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.outcomes.WhatHappened;
import org.tunica.physics.Physics;
import org.tunica.physics.SegmentNumbers;
import org.tunica.plan.Advice;
import org.tunica.plan.SimilarAdvice;

/** Writes what a search found so that people can read why. */
public final class SimilarWriter {
    private static final double SHARE_STEPS = 10_000;
    private static final double MM_STEPS = 100;

    private final CaseLibrary library;
    private final Physics physics;
    private final HappenedToHits happened;

    /** A writer over a library. */
    public SimilarWriter(CaseLibrary library, Physics physics, Knowledge knowledge) {
        this.library = library;
        this.physics = physics;
        this.happened = new HappenedToHits(knowledge);
    }

    /** Past segments like those of a case, or like one of them. */
    public SimilarCases of(CaseFile caseFile, SimilarRequest request) {
        List<SimilarCases.ForSegment> segments = caseFile.limbs().stream()
                .flatMap(limb -> limb.segments().stream()
                        .filter(segment ->
                                request.segment().map(segment.ref()::equals).orElse(true))
                        .map(segment -> forSegment(caseFile, limb, segment, request)))
                .toList();
        return cases(Optional.of(caseFile.caseRef()), request.filter(), segments, Optional.empty());
    }

    private SimilarCases.ForSegment forSegment(CaseFile caseFile, Limb limb, Segment segment, SimilarRequest request) {
        Found found = library.nearest(caseFile, limb, segment, request.filter(), happened.enough(request.most()));
        Optional<WhatHappened> counted = happened.of(found, request.filter());
        return new SimilarCases.ForSegment(
                segment.ref(),
                limb.side(),
                segment.vein(),
                segment.level(),
                advice(found, request.most(), counted),
                counted);
    }

    /** Past segments whose notes fit some words; the words stand in the filter of the answer too. */
    public SimilarCases byWords(String words, SimilarRequest request) {
        SimilarFilter filter = request.filter();
        SimilarFilter asked = new SimilarFilter(
                filter.technique(), filter.outcome(), filter.invented(), filter.site(), Optional.of(words));
        Found found = library.byWords(words, filter, happened.enough(request.most()));
        SimilarAdvice advice = advice(found, request.most(), happened.of(found, filter));
        return cases(Optional.empty(), asked, List.of(), Optional.of(advice));
    }

    private SimilarCases cases(
            Optional<String> caseRef,
            SimilarFilter filter,
            List<SimilarCases.ForSegment> segments,
            Optional<SimilarAdvice> byWords) {
        return new SimilarCases(
                SimilarCases.FORMAT,
                caseRef,
                Advice.CAUTION,
                library.says(),
                library.invented(),
                library.size(),
                filter,
                segments,
                byWords);
    }

    private SimilarAdvice advice(Found found, int most, Optional<WhatHappened> counted) {
        return new SimilarAdvice(
                SimilarAdvice.SAYS,
                found.considered(),
                found.tooLittleKnown(),
                found.hits().stream().limit(most).map(this::nearest).toList(),
                happened.words(counted));
    }

    private SimilarAdvice.Nearest nearest(Hit hit) {
        PastSegment past = hit.past();
        Segment segment = past.segment();
        SegmentNumbers numbers = physics.segment(past.pastCase().caseFile(), segment);
        return new SimilarAdvice.Nearest(
                past.pastCase().id(),
                segment.ref(),
                past.pastCase().invented(),
                share(hit.likeness().map(Likeness::similarity)),
                share(hit.likeness().map(Likeness::knownShare)),
                past.limb().side(),
                segment.vein(),
                segment.level(),
                mm(numbers.relaxedWallMm()),
                mm(numbers.relaxedLumenMm()),
                mm(segment.nerve().gapMm()),
                past.treated().technique(),
                SettingWords.of(past.delivered()),
                CourseWords.of(past),
                hit.likeness().map(SimilarWriter::why).orElse(List.of()),
                hit.likeness().map(SimilarWriter::notCompared).orElse(List.of()));
    }

    private static List<SimilarAdvice.Why> why(Likeness likeness) {
        return likeness.contributions().stream()
                .sorted(Comparator.comparingDouble((Likeness.Contribution one) -> -one.weight()))
                .map(one -> new SimilarAdvice.Why(
                        one.attribute(),
                        one.here(),
                        one.there(),
                        rounded(one.alike(), SHARE_STEPS),
                        one.weight(),
                        rounded(one.points(), SHARE_STEPS)))
                .toList();
    }

    private static List<String> notCompared(Likeness likeness) {
        return likeness.notCompared().stream()
                .map(one -> one.attribute() + ": " + one.why())
                .toList();
    }

    private static OptionalDouble share(Optional<Double> number) {
        return number.map(known -> OptionalDouble.of(rounded(known, SHARE_STEPS)))
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble mm(OptionalDouble number) {
        return number.isPresent() ? OptionalDouble.of(rounded(number.getAsDouble(), MM_STEPS)) : OptionalDouble.empty();
    }

    private static double rounded(double number, double steps) {
        return Math.round(number * steps) / steps;
    }
}
