package org.tunica.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.tunica.heat.BenchFile;
import org.tunica.heat.BenchRow;
import org.tunica.heat.CalibrationReport;
import org.tunica.heat.HeatSetting;
import org.tunica.knowledge.Knowledge;
import org.tunica.plan.Advice;
import org.tunica.wording.SettingWords;

/** A calibration as text: how well it fits, the constants and how surely, and what the data cannot tell. */
final class CalibrationText {
    private static final String NOT_FOR_USE =
            "A proposal for governance, not for use: no constant has changed. " + Advice.CAUTION;

    private static final MathContext FOUR_DIGITS = new MathContext(4);
    private static final int LINE = 6;
    private static final int DEVICE = 24;
    private static final int SETTING = 18;
    private static final int NUMBER = 10;
    private static final int MARGIN = 2;

    private final Knowledge knowledge;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    CalibrationText(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    String of(CalibrationReport report) {
        head(report);
        residuals(report);
        constants(report);
        correlations(report);
        doubts(report);
        out.append('\n');
        paragraph(0, NOT_FOR_USE);
        return out.toString();
    }

    private void head(CalibrationReport report) {
        BenchFile bench = report.bench();
        paragraph(0, NOT_FOR_USE);
        title("Calibration on " + bench.name());
        paragraph(
                MARGIN,
                bench.rows().size() + " rows, " + bench.conditions() + " different conditions, " + bench.depths()
                        + " depths, of which " + bench.depthsInsideTheWall()
                        + " end inside the wall; a wall dead through and through counts as \"at least\". "
                        + report.constants().size() + " free constants, " + report.freedom()
                        + " degrees of freedom.");
        paragraph(
                MARGIN,
                "Off by (root mean square): before " + mm(report.before().rmsMm()) + " mm, after "
                        + mm(report.after().rmsMm()) + " mm" + deviations(report) + ".");
        paragraph(MARGIN, chars(report));
    }

    private static String deviations(CalibrationReport report) {
        OptionalDouble before = report.before().rmsDeviations();
        OptionalDouble after = report.after().rmsDeviations();
        return before.isEmpty()
                ? "; all depths weigh the same"
                : "; in stated standard deviations " + three(before.getAsDouble()) + " and "
                        + three(after.orElseThrow());
    }

    private static String chars(CalibrationReport report) {
        CalibrationReport.Fit before = report.before();
        CalibrationReport.Fit after = report.after();
        if (after.charLooked() == 0) {
            return "Char: nobody looked.";
        }
        return "Char, a yes or no that is counted and not fitted: agrees in " + before.charAgreed() + " of "
                + before.charLooked() + " rows before, " + after.charAgreed() + " after ("
                + after.charMissed() + " seen but not computed, " + after.charInvented()
                + " computed but not seen).";
    }

    private void residuals(CalibrationReport report) {
        title("Residuals, mm (computed less measured)");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("line", "device", "setting", "dead", "measured", "before", "after", "off after"));
        report.rows().forEach(fit -> rows.addAll(rows(fit)));
        out.append(Wrap.table(width, List.of(LINE, DEVICE, SETTING, NUMBER, NUMBER, 9, 9), rows));
        report.rows().stream()
                .flatMap(fit -> fit.row().offs(fit.after()).stream()
                        .map(off -> new Worst(fit.row().line(), off)))
                .max(Comparator.comparingDouble(worst -> Math.abs(worst.off().weighed())))
                .ifPresent(worst -> paragraph(
                        MARGIN,
                        "Farthest off after the fit: line " + worst.line() + ", " + kind(worst.off()) + ", by "
                                + mm(worst.off().mm()) + " mm."));
    }

    private record Worst(int line, BenchRow.Off off) {}

    private static List<List<String>> rows(CalibrationReport.RowFit fit) {
        BenchRow row = fit.row();
        List<BenchRow.Off> before = row.offs(fit.before());
        List<BenchRow.Off> after = row.offs(fit.after());
        return IntStream.range(0, after.size())
                .mapToObj(i -> List.of(
                        i == 0 ? Integer.toString(row.line()) : "",
                        i == 0 ? row.setting().deviceId() : "",
                        i == 0 ? setting(row.setting()) : "",
                        kind(after.get(i)),
                        (row.wholeWall(after.get(i).depth()) ? ">= " : "")
                                + mm(after.get(i).depth().depthMm()),
                        mm(before.get(i).computedMm()),
                        mm(after.get(i).computedMm()),
                        mm(after.get(i).mm())))
                .toList();
    }

    private static String kind(BenchRow.Off off) {
        return off.kind() == BenchRow.Kind.KILLED ? "at once" : "later";
    }

    private static String setting(HeatSetting setting) {
        if (setting instanceof HeatSetting.Pulled pulled) {
            return SettingWords.plain(pulled.powerW()) + " W x " + SettingWords.plain(pulled.pullbackSPerCm())
                    + " s/cm";
        }
        return setting instanceof HeatSetting.Held held
                ? "cycles: " + held.cycles()
                : SettingWords.plain(((HeatSetting.Pulsed) setting).pulsesPerCm()) + " pulses/cm";
    }

    private void constants(CalibrationReport report) {
        title("Constants");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "constant", "before", "fitted", "std error", "95 % interval"));
        int letter = 'A';
        for (CalibrationReport.Fitted fitted : report.constants()) {
            rows.add(List.of(
                    Character.toString(letter++),
                    fitted.id(),
                    four(fitted.before()),
                    four(fitted.value()),
                    fitted.spread().map(spread -> three(spread.standardError())).orElse("not fixed"),
                    interval(fitted)));
            rows.add(List.of("", range(fitted), "", "", "", ""));
        }
        out.append(Wrap.table(width, List.of(3, 32, 12, 12, 12), rows));
        paragraph(
                MARGIN,
                report.startsAgreeing() + " of " + report.starts() + " starts ended at these constants"
                        + (report.settled() ? "." : "; the fit did not come to rest, so they mean little."));
    }

    private static String interval(CalibrationReport.Fitted fitted) {
        return fitted.spread()
                .filter(spread -> !fitted.tellsLittle())
                .map(spread -> four(spread.low95()) + " - " + four(spread.high95()))
                .orElse("wider than its range");
    }

    private String range(CalibrationReport.Fitted fitted) {
        String unit = knowledge.quantity(fitted.id()).unit();
        return "  " + four(fitted.low()) + " - " + four(fitted.high()) + (unit.equals("1") ? "" : " " + unit);
    }

    private void correlations(CalibrationReport report) {
        List<CalibrationReport.Fitted> constants = report.constants();
        if (constants.size() > 1) {
            title("Correlations");
            List<List<String>> rows = new ArrayList<>();
            for (int j = 0; j < constants.size(); j++) {
                List<String> row = new ArrayList<>(List.of(Character.toString('A' + j)));
                for (int k = 0; k < constants.size(); k++) {
                    row.add(k < j ? correlation(report, constants.get(k), constants.get(j)) : k == j ? "1" : "");
                }
                rows.add(row);
            }
            out.append(Wrap.table(
                    width,
                    IntStream.range(0, constants.size())
                            .mapToObj(k -> k == 0 ? 3 : 8)
                            .toList(),
                    rows));
        }
        paragraph(
                MARGIN,
                "Condition of the problem: "
                        + (report.condition() < 1e9 ? three(report.condition()) : "without bound")
                        + " (1 when every constant acts in a way of its own, above about 30 when they stand in for each"
                        + " other; from memory, unverified).");
    }

    private static String correlation(
            CalibrationReport report, CalibrationReport.Fitted one, CalibrationReport.Fitted other) {
        return report.correlations().stream()
                .filter(pair -> pair.id().equals(one.id()) && pair.other().equals(other.id()))
                .map(pair -> pair.correlation())
                .flatMapToDouble(OptionalDouble::stream)
                .mapToObj(value -> String.format(Locale.ROOT, "%.2f", value))
                .findFirst()
                .orElse("n/a");
    }

    private void doubts(CalibrationReport report) {
        title("What the data cannot tell");
        List<String> doubts = new ArrayList<>();
        report.notToldApart().forEach(group -> doubts.add(together(group)));
        report.constants().forEach(fitted -> doubt(fitted).ifPresent(doubts::add));
        if (report.bench().conditions() <= report.constants().size()) {
            doubts.add("Different conditions in the rows: " + report.bench().conditions()
                    + "; measure at more settings and walls.");
        }
        if (report.startsAgreeing() < report.starts()) {
            doubts.add("Other starts ended at other constants.");
        }
        if (doubts.isEmpty()) {
            doubts.add("Nothing stood out: the constants are told apart and inside their ranges.");
        }
        doubts.forEach(doubt -> paragraph(MARGIN, doubt));
    }

    private static String together(CalibrationReport.Together group) {
        String ids = String.join(" and ", group.ids());
        return group.correlation().isPresent()
                ? ids + " are not told apart (correlation "
                        + String.format(Locale.ROOT, "%.3f", group.correlation().getAsDouble())
                        + "): a change of one is made up for by the other. Fix one of them or measure it."
                : ids + " are not told apart at all: only a combination of them shows. Fix one of them or measure it.";
    }

    private static Optional<String> doubt(CalibrationReport.Fitted fitted) {
        List<String> says = new ArrayList<>();
        if (fitted.atEdge()) {
            says.add("stands at the edge of its range: the data pull beyond it, or the model lacks something");
        }
        if (fitted.spread().isEmpty()) {
            says.add("is not fixed by these data");
        } else if (fitted.tellsLittle()) {
            says.add("has an interval as wide as its range: the data add nothing");
        }
        return says.isEmpty() ? Optional.empty() : Optional.of(fitted.id() + " " + String.join(", and ", says) + ".");
    }

    private void title(String title) {
        out.append('\n')
                .append(title)
                .append('\n')
                .append("-".repeat(title.length()))
                .append('\n');
    }

    private void paragraph(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }

    /** To a micrometre, and no minus before a nought. */
    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.3f", Math.rint(value * 1000) / 1000 + 0.0);
    }

    private static String three(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }

    /** Four digits; very large and very small numbers with a power of ten. */
    private static String four(double value) {
        double size = Math.abs(value);
        return size != 0 && (size < 1e-3 || size >= 1e6)
                ? String.format(Locale.ROOT, "%.2e", value)
                : new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros().toPlainString();
    }
}
