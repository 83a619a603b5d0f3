package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Segment;
import org.tunica.drawing.WallStrip;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.OptionStanding;
import org.tunica.plan.SegmentAdvice;
import org.tunica.wording.FirmnessWords;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;

/**
 * One segment of an advice as a page shows it.
 *
 * @param ref name of the segment
 * @param title side in full, vein and level
 * @param numbers computed from the scan, each with its help
 * @param strip the wall to scale as SVG, empty when there is no wall to draw
 * @param stripTable the same as a table, its head first
 * @param ranked options best first
 * @param others options that are not ranked, under the headings of their standing
 * @param nearMisses numbers close to a limit
 * @param firmness how firm the ranking is, the most important line first
 * @param hardCase signs of a hard case
 * @param notes help to what is computed for the ranked options
 */
public record SegmentView(
        String ref,
        String title,
        List<NumberView> numbers,
        String strip,
        List<List<String>> stripTable,
        List<OptionView> ranked,
        List<Others> others,
        List<NearMiss> nearMisses,
        List<String> firmness,
        List<String> hardCase,
        List<NumberNote> notes) {
    /** What little difference would change how a technique stands, with the help to the limit it is near. */
    public record NearMiss(String says, List<NumberNote> notes) {}

    /** Options that are not ranked, under one heading. */
    public record Others(String heading, List<OptionView> options) {}

    static SegmentView of(SegmentAdvice advice, Segment segment, Knowledge knowledge) {
        WallStrip strip = WallStrip.of(advice, segment);
        return new SegmentView(
                advice.ref(),
                SegmentWords.title(advice),
                SegmentNotes.of(advice.derived(), knowledge),
                strip.rows().isEmpty() ? "" : strip.svg(knowledge),
                strip.table(),
                ranked(advice, knowledge),
                others(advice, knowledge),
                advice.nearMisses().stream()
                        .map(miss -> new NearMiss(
                                SegmentWords.nearMiss(miss, knowledge),
                                NumberNote.of(List.of(miss.limit()), knowledge)))
                        .toList(),
                firmness(advice, knowledge),
                advice.hardCase().stream().map(ReasonWords::line).toList(),
                OptionNotes.ofAll(rankedOf(advice), knowledge));
    }

    private static List<OptionView> ranked(SegmentAdvice advice, Knowledge knowledge) {
        return rankedOf(advice).stream()
                .map(option -> OptionView.of(option, knowledge))
                .toList();
    }

    private static List<OptionAdvice> rankedOf(SegmentAdvice advice) {
        return advice.options().stream()
                .filter(option -> option.standing().ranked())
                .toList();
    }

    private static List<Others> others(SegmentAdvice advice, Knowledge knowledge) {
        List<Others> others = new ArrayList<>();
        for (OptionStanding standing :
                List.of(OptionStanding.MEASURE_FIRST, OptionStanding.NOT_IN_ROOM, OptionStanding.EXCLUDED)) {
            List<OptionView> options = advice.options().stream()
                    .filter(option -> option.standing() == standing)
                    .map(option -> OptionView.of(option, knowledge))
                    .toList();
            if (!options.isEmpty()) {
                others.add(new Others(SegmentWords.heading(standing), options));
            }
        }
        return others;
    }

    private static List<String> firmness(SegmentAdvice advice, Knowledge knowledge) {
        return advice.firmness()
                .map(firmness -> new FirmnessWords(knowledge, true)
                        .lines(firmness).stream().map(FirmnessWords.Line::text).toList())
                .orElse(List.of());
    }
}
