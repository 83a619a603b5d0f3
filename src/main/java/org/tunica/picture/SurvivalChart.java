package org.tunica.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tunica.statistics.FreeShare;
import org.tunica.statistics.KaplanMeier;
import org.tunica.statistics.LogRank;
import org.tunica.statistics.MedianTime;
import org.tunica.statistics.SurvivalAt;
import org.tunica.statistics.SurvivalStep;

/**
 * Curves of how long something stays as it should. The steps of a curve and the numbers at risk show single cases, so whoever may
 * not show those rounds their days first, or shows no curve.
 *
 * @param head what the caller says of it
 * @param free what the share stays, such as "closed"
 * @param groups one to four, lettered in this order
 * @param daysAsked days at which the table reads the curves
 * @param comparison of the first two groups
 */
public record SurvivalChart(
        ChartHead head, String free, List<Group> groups, List<Integer> daysAsked, Optional<LogRank> comparison) {
    /** More curves cannot be told apart. */
    public static final int MOST_GROUPS = 4;

    private static final double PERCENT = 100;
    private static final String UNTOLD = "?";
    private static final double ROOMY = 50;
    private static final double TENS = 10;
    private static final double LEAST_SHOWN = 1e-4;

    /**
     * One curve.
     *
     * @param name in few words
     */
    public record Group(String name, KaplanMeier curve) {}

    public SurvivalChart {
        groups = List.copyOf(groups);
        daysAsked = List.copyOf(new TreeSet<>(daysAsked));
        if (groups.isEmpty() || groups.size() > MOST_GROUPS) {
            throw new IllegalArgumentException("groups must be 1 to " + MOST_GROUPS + ", are " + groups.size());
        }
    }

    /** The letter a group has in text and picture. */
    public String letter(int group) {
        return String.valueOf((char) ('A' + group));
    }

    /** The last day of any curve. */
    public int lastDay() {
        return groups.stream()
                .mapToInt(group -> group.curve().lastDaysAfter())
                .max()
                .orElseThrow();
    }

    /** Days beneath the axis: the start and those asked for that lie within, the last day where none does. */
    public List<Integer> axisDays() {
        TreeSet<Integer> days = new TreeSet<>(daysAsked);
        days.removeIf(day -> day > lastDay());
        days.add(0);
        if (days.size() == 1) {
            days.add(lastDay());
        }
        return List.copyOf(days);
    }

    /** Cases of a group at risk on a day, or a mark where the curve has ended before. */
    public String atRisk(int group, int day) {
        return groups.get(group)
                .curve()
                .at(day)
                .map(read -> String.valueOf(read.atRisk()))
                .orElse(UNTOLD);
    }

    /** Where the axis starts: at nothing, or higher up when all curves and limits stay in the upper half. */
    public double axisFromPercent() {
        double lowest = PERCENT * lowest(free -> free.lowShare().orElse(free.freeShare()));
        return lowest < ROOMY ? 0 : TENS * Math.floor(Math.min(lowest, PERCENT - 1) / TENS);
    }

    private double lowest(ToDoubleFunction<FreeShare> reading) {
        return groups.stream()
                .flatMap(group -> group.curve().steps().stream())
                .mapToDouble(step -> reading.applyAsDouble(step.free()))
                .min()
                .orElseThrow();
    }

    /** The words and the table. */
    public ChartWords words() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            for (int day : daysAsked) {
                rows.add(row(letter(i), groups.get(i).curve(), day));
            }
        }
        List<String> findings = new ArrayList<>();
        comparison.ifPresent(found -> findings.add(compared(found)));
        IntStream.range(0, groups.size()).forEach(i -> findings.add(half(i)));
        return new ChartWords(
                head.title(),
                head.subtitle(),
                "Share still " + free + " by the method of Kaplan and Meier: "
                        + IntStream.range(0, groups.size())
                                .mapToObj(i -> letter(i) + " = " + groups.get(i).name() + " ("
                                        + groups.get(i).curve().cases() + ")")
                                .collect(Collectors.joining("; "))
                        + ". At risk: still followed and still " + free + ".",
                List.of("group", "day", "at risk", free, confidence() + " limits"),
                rows,
                head.notesAfter(findings));
    }

    private String confidence() {
        return Figures.tenths(PERCENT * groups.get(0).curve().confidenceShare()) + " %";
    }

    private static List<String> row(String letter, KaplanMeier curve, int day) {
        Optional<SurvivalAt> read = curve.at(day);
        if (read.isEmpty()) {
            return List.of(letter, String.valueOf(day), UNTOLD, UNTOLD, "too few followed so long");
        }
        FreeShare free = read.get().free();
        String limits = free.lowShare().isPresent()
                ? Figures.tenths(PERCENT * free.lowShare().getAsDouble()) + " to "
                        + Figures.tenths(PERCENT * free.highShare().orElseThrow()) + " %"
                : free.freeShare() > 0 ? "none: no event yet" : "none: no case left";
        return List.of(
                letter,
                String.valueOf(day),
                String.valueOf(read.get().atRisk()),
                Figures.tenths(PERCENT * free.freeShare()) + " %",
                limits);
    }

    private String half(int group) {
        KaplanMeier curve = groups.get(group).curve();
        MedianTime median = curve.median();
        int events = curve.steps().stream().mapToInt(SurvivalStep::events).sum();
        String start = letter(group) + ": " + events + " events; ";
        if (median.daysAfter().isEmpty()) {
            return start + "more than half stayed " + free + " as long as they were followed.";
        }
        return start + "half were no longer " + free + " by day "
                + median.daysAfter().getAsInt() + " (" + confidence() + " limits: day "
                + day(median.lowDaysAfter()) + " to " + day(median.highDaysAfter()) + ").";
    }

    private static String day(OptionalInt day) {
        return day.isPresent() ? String.valueOf(day.getAsInt()) : "not reached";
    }

    private String compared(LogRank found) {
        double chance = found.chanceProbability();
        String often = chance < LEAST_SHOWN
                ? "less than " + Figures.number(PERCENT * LEAST_SHOWN)
                : Figures.number(PERCENT * chance);
        return "Log-rank test of A against B: if both ran the same risk, chance alone would make such a difference or a"
                + " larger one in " + often + " % of comparisons (chi-square "
                + Figures.number(found.chiSquare()) + "; A " + seen(found.first()) + ", B " + seen(found.second())
                + "). The groups were not drawn by lot and may differ in more than what names them.";
    }

    private static String seen(LogRank.Group group) {
        return group.observed() + " events, " + Figures.tenths(group.expected()) + " expected";
    }
}
