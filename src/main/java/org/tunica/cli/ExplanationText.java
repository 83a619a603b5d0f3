package org.tunica.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.UcumWords;
import org.tunica.plan.Advice;
import org.tunica.plan.Explanation;
import org.tunica.plan.OptionAdvice;
import org.tunica.rules.Conclusion;
import org.tunica.rules.Condition;
import org.tunica.rules.NearMiss;
import org.tunica.rules.Rule;
import org.tunica.rules.Tried;
import org.tunica.rules.Truth;
import org.tunica.wording.SettingWords;

/** An explanation as text: what spoke, what is in doubt, what came close, what one condition kept quiet. */
final class ExplanationText {
    private static final int MARGIN = 2;
    private static final int INDENT = 4;
    private static final int DEEPER = 8;

    /** A rule made for other techniques is not kept quiet by anything about this leg. */
    private static final Set<String> OF_THE_TECHNIQUE =
            Set.of("option.family", "option.technique", "option.needs", "option.inRoom");

    private final int width;
    private final boolean all;
    private final StringBuilder out = new StringBuilder();

    /** @param all also list rules that a word, a piece of history or a finding keeps quiet */
    ExplanationText(int width, boolean all) {
        this.width = width;
        this.all = all;
    }

    String of(Explanation explanation) {
        OptionAdvice option = explanation.option();
        line(
                0,
                explanation.segment().ref() + ", "
                        + explanation.segment().side().word().toUpperCase(Locale.ROOT) + " leg: " + option.says()
                        + " stands as "
                        + option.standing().word() + ": " + option.why() + ".");
        line(
                0,
                explanation.release().state().word().toUpperCase(Locale.ROOT) + " rules "
                        + explanation.release().version() + ". " + Advice.CAUTION);
        section("Rules that speak", with(explanation, Truth.TRUE), Tried::conditions);
        section("Rules in doubt", with(explanation, Truth.UNKNOWN), Tried::conditions);
        close(explanation.nearMisses());
        List<Tried> wanting = wanting(explanation);
        List<Tried> shown =
                wanting.stream().filter(tried -> all || byNumber(tried)).toList();
        section("Quiet for want of one condition" + (all ? "" : ", a number"), shown, Tried::failed);
        out.append('\n');
        line(MARGIN, rest(explanation, wanting.size() - shown.size(), wanting.size()));
        return out.toString();
    }

    private static String rest(Explanation explanation, int hidden, int wanting) {
        long quiet = explanation.tried().stream()
                .filter(tried -> tried.truth() == Truth.FALSE)
                .count();
        return (hidden == 0 ? "" : hidden + " more rules want one condition that is no number (--all). ")
                + (quiet - wanting) + " rules are quiet for several reasons, or are made for other techniques.";
    }

    private static boolean byNumber(Tried tried) {
        return tried.failed().get(0).awayShare().isPresent();
    }

    private static List<Tried> with(Explanation explanation, Truth truth) {
        return explanation.tried().stream()
                .filter(tried -> tried.truth() == truth)
                .toList();
    }

    /** Gravest kind of rule first, then numbers by their distance to the limit, then what is a matter of words. */
    private static List<Tried> wanting(Explanation explanation) {
        return explanation.tried().stream()
                .filter(tried -> tried.truth() == Truth.FALSE && decides(tried.rule()))
                .filter(tried -> tried.failed().size() == 1
                        && aboutTheLeg(tried.failed().get(0).condition()))
                .sorted(Comparator.comparingInt((Tried tried) ->
                                tried.rule().conclusion().kind().stage())
                        .thenComparingDouble(
                                tried -> tried.failed().get(0).awayShare().orElse(Double.MAX_VALUE))
                        .thenComparing(tried -> tried.rule().id()))
                .toList();
    }

    /** A finding decides nothing alone, and that something is recorded keeps no rule quiet that a reader misses. */
    private static boolean decides(Rule rule) {
        Conclusion.Kind kind = rule.conclusion().kind();
        return kind != Conclusion.Kind.FIND && kind != Conclusion.Kind.MEASURE_FIRST;
    }

    private static boolean aboutTheLeg(Condition condition) {
        return !(condition instanceof Condition.OnOption onOption)
                || !OF_THE_TECHNIQUE.contains(onOption.field().id());
    }

    private void section(String title, List<Tried> rules, Function<Tried, List<Tried.Tested>> shown) {
        out.append('\n');
        line(MARGIN, title + (rules.isEmpty() ? ": none." : ":"));
        for (Tried tried : rules) {
            Rule rule = tried.rule();
            line(
                    INDENT,
                    rule.id() + " (" + rule.conclusion().sentence() + "; "
                            + rule.standing().word() + "): " + rule.title());
            shown.apply(tried).forEach(tested -> line(DEEPER, met(tested)));
        }
    }

    private static String met(Tried.Tested tested) {
        String mark = switch (tested.truth()) {
            case TRUE -> "+ ";
            case FALSE -> "- ";
            case UNKNOWN -> "? ";
        };
        return mark + tested.condition().sentence() + met(tested, limits(tested.condition()));
    }

    private static String met(Tried.Tested tested, String limits) {
        List<String> parts =
                Stream.of(tested.met(), limits).filter(part -> !part.isEmpty()).toList();
        return parts.isEmpty() ? "" : " [" + String.join("; ", parts) + "]";
    }

    private static String limits(Condition condition) {
        return condition instanceof Condition.OnOption onOption
                        && !onOption.limits().isEmpty()
                ? onOption.limits().stream()
                        .map(limit -> SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()))
                        .collect(Collectors.joining(" and ", "limit ", ""))
                : "";
    }

    private void close(List<NearMiss> misses) {
        out.append('\n');
        line(MARGIN, "Close to a limit" + (misses.isEmpty() ? ": none." : ":"));
        for (NearMiss miss : misses) {
            line(
                    INDENT,
                    miss.rule().id() + " would " + (miss.speaks() ? "fall silent" : "speak") + " (\""
                            + miss.rule().conclusion().sentence() + "\") were " + miss.wouldNeed());
        }
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
