package org.tunica.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.drawing.LegMap;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;
import org.tunica.plan.SegmentAdvice;

/**
 * An advice as a page shows it.
 *
 * @param release which rules and knowledge, and that they are a draft when they are one
 * @param legs the legs of the case
 * @param segments in the order of the case
 * @param named limits and sources that reasons name
 */
public record AdviceView(
        String caseRef, String release, List<LegView> legs, List<SegmentView> segments, NamedView named) {
    /** A leg drawn, and the same in words. */
    public record LegView(String title, String svg, List<String> sentences) {}

    public AdviceView {
        legs = List.copyOf(legs);
        segments = List.copyOf(segments);
    }

    /** The view of an advice for a case. */
    public static AdviceView of(CaseFile caseFile, Advice advice, Knowledge knowledge) {
        Map<String, SegmentAdvice> advised = new HashMap<>();
        advice.segments().forEach(segment -> advised.put(segment.ref(), segment));
        List<LegView> legs = new ArrayList<>();
        List<SegmentView> segments = new ArrayList<>();
        for (Limb limb : caseFile.limbs()) {
            legs.add(leg(limb, advised));
            for (Segment segment : limb.segments()) {
                segments.add(SegmentView.of(advised.get(segment.ref()), segment, knowledge));
            }
        }
        return new AdviceView(
                advice.caseRef(), release(advice.release()), legs, segments, NamedView.of(advice, knowledge));
    }

    /** What can be shown of a case while nothing of its advice is known: its legs, and that nothing is judged yet. */
    public static AdviceView awaiting(CaseFile caseFile, Advice.Release release) {
        List<LegView> legs = caseFile.limbs().stream()
                .map(limb -> {
                    Map<String, String> says = new HashMap<>();
                    limb.segments().forEach(segment -> says.put(segment.ref(), "still computed"));
                    return leg(limb, new LegMap(limb, says));
                })
                .toList();
        return new AdviceView(
                caseFile.caseRef(), release(release), legs, List.of(), new NamedView(List.of(), List.of()));
    }

    private static LegView leg(Limb limb, LegMap map) {
        return new LegView(limb.side().word().toUpperCase(Locale.ROOT) + " leg", map.svg(), map.sentences());
    }

    private static LegView leg(Limb limb, Map<String, SegmentAdvice> advised) {
        Map<String, String> says = new HashMap<>();
        limb.segments().forEach(segment -> says.put(segment.ref(), first(advised.get(segment.ref()))));
        return leg(limb, new LegMap(limb, says));
    }

    private static String first(SegmentAdvice segment) {
        return segment.options().stream()
                .filter(option -> option.standing().ranked())
                .findFirst()
                .map(option -> option.says() + ", " + option.standing().word())
                .orElse("nothing can be ranked yet");
    }

    /** Which rules and knowledge, in a few words. */
    static String release(Advice.Release release) {
        return release.state().word().toUpperCase(Locale.ROOT) + " rules " + release.version() + ", "
                + release.digest().substring(0, 19);
    }
}
