package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import org.tunica.drawing.StandingSign;
import org.tunica.knowledge.Family;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.OptionAdvice;
import org.tunica.wording.ForecastWords;
import org.tunica.wording.ReasonWords;
import org.tunica.wording.SegmentWords;
import org.tunica.wording.SettingWords;

/**
 * One option as a page shows it.
 *
 * @param rank in figures; empty when not ranked
 * @param technique its id
 * @param says the technique in words
 * @param heat whether it works by heat, so that its settings can be looked at
 * @param sign of the standing, known by its shape
 * @param standing in words
 * @param why the standing in one line
 * @param forecast settings proposed and what the models foresee
 * @param custom customary settings and amounts
 * @param cautions each with its rule
 * @param reasons everything that speaks for, against, or excludes
 * @param points how the points come about; empty when not ranked
 * @param leads share of draws in which it is first, in words; empty when not ranked
 * @param notes help to its numbers; none when it is not ranked
 */
public record OptionView(
        String rank,
        String technique,
        String says,
        boolean heat,
        String sign,
        String standing,
        String why,
        List<String> forecast,
        List<String> custom,
        List<String> cautions,
        List<ReasonView> reasons,
        List<String> points,
        String leads,
        List<NumberNote> notes) {
    /** A reason, how it stands, where it comes from, and the limits it names, which the end of the page tells of. */
    public record ReasonView(String stands, String rule, String text, String origin, List<String> limits) {}

    static OptionView of(OptionAdvice option, Knowledge knowledge) {
        return new OptionView(
                option.rank().isPresent() ? Integer.toString(option.rank().getAsInt()) : "",
                option.technique(),
                option.says(),
                option.family() == Family.HEAT,
                StandingSign.of(option.standing()),
                option.standing().word().replace('-', ' '),
                SegmentWords.why(option),
                ForecastWords.lines(option),
                SettingWords.parts(option.settings(), knowledge),
                option.cautions().stream()
                        .map(caution -> ReasonWords.lead(caution) + ReasonWords.line(caution))
                        .toList(),
                option.reasons().stream()
                        .map(reason -> new ReasonView(
                                reason.stands().word().replace('-', ' '),
                                reason.rule(),
                                ReasonWords.text(reason),
                                ReasonWords.source(reason),
                                reason.limits()))
                        .toList(),
                points(option),
                option.firstPlaceShare().isPresent()
                        ? Math.round(100 * option.firstPlaceShare().getAsDouble()) + " %"
                        : "",
                option.rank().isPresent() ? OptionNotes.of(option, knowledge) : List.of());
    }

    private static List<String> points(OptionAdvice option) {
        List<String> points = new ArrayList<>();
        option.scoreTree().ifPresent(tree -> {
            points.add("points " + SettingWords.plain(tree.value()));
            tree.parts().forEach(part -> points.add(SettingWords.plain(part.value()) + " " + part.says()));
        });
        option.tie().ifPresent(tie -> points.add(tie.says()));
        return points;
    }
}
