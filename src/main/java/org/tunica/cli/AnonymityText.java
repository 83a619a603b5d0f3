package org.tunica.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tunica.knowledge.FieldDecision;
import org.tunica.pastcases.AnonymityReport;
import org.tunica.plan.Advice;

/** How well nobody can be found in a base, as text for the one who answers for it. */
final class AnonymityText {
    private static final int SHOWN = 10;
    private static final List<Integer> SIZES = List.of(18, 10);
    private static final List<Integer> TRIED = List.of(8, 6, 6, 12);

    private static final Map<FieldDecision, String> SAYS = new EnumMap<>(Map.of(
            FieldDecision.KEPT, "kept, words of closed lists, counts, and days counted from the procedure",
            FieldDecision.ROUNDED, "rounded to what is measured",
            FieldDecision.BANDED, "as a band in place of the number",
            FieldDecision.RENAMED, "renamed at random or by number",
            FieldDecision.SCRUBBED, "in the notes, as far as the words are of a closed vocabulary",
            FieldDecision.DROPPED, "left out"));

    private final int width;
    private final StringBuilder out = new StringBuilder();

    AnonymityText(int width) {
        this.width = width;
    }

    String of(AnonymityReport report) {
        title("Anonymity of a base of past cases");
        line(0, cases(report));
        line(0, report.caution());
        title("What an outsider is taken to know");
        report.told().forEach(told -> line(2, told.name() + ": " + told.ways().get(0) + otherWays(told.ways())));
        line(0, rare(report));
        fields(report);
        title("As the base stands");
        line(0, stands(report));
        sizes(report);
        title("If less were told");
        if (report.cases() == 0) {
            line(0, "There is nothing to tell less of.");
            return end();
        }
        report.mildest().forEach(mildest -> line(0, mildest(report, mildest)));
        out.append('\n');
        tried(report);
        return end();
    }

    private String end() {
        out.append('\n');
        line(0, Advice.CAUTION);
        return out.toString();
    }

    private static String cases(AnonymityReport report) {
        return report.cases() + " past cases, " + report.invented()
                + " of them invented. Invented and real ones are counted apart: nobody can hide among people who never were.";
    }

    private static String otherWays(List<String> ways) {
        return ways.size() == 1 ? "" : "; could be " + String.join(", ", ways.subList(1, ways.size()));
    }

    /** Nobody reads a hundred names of fields: those that are missing or changed are told, the others counted. */
    private void fields(AnonymityReport report) {
        title("What became of the records when the person was taken out");
        report.fields()
                .forEach((decision, names) -> line(
                        2,
                        SAYS.get(decision) + ": "
                                + (decision == FieldDecision.KEPT || decision == FieldDecision.ROUNDED
                                        ? names.size() + " fields"
                                        : names.stream()
                                                .map(AnonymityText::plain)
                                                .distinct()
                                                .collect(Collectors.joining(", ")))));
    }

    /** {@code Patient.ageYears} reads "age years". */
    private static String plain(String field) {
        return field.substring(field.lastIndexOf('.') + 1)
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
    }

    private static String rare(AnonymityReport report) {
        return report.rare().isEmpty()
                ? "No condition or allergy is rare here."
                : "Rare here, had by fewer than " + report.kAsked() + ", and so counted as known: "
                        + String.join(", ", report.rare()).replace('-', ' ') + ".";
    }

    private static String stands(AnonymityReport report) {
        if (report.cases() == 0) {
            return "The base is empty.";
        }
        String small = report.below() == 0
                ? "None stands in a smaller group."
                : report.below() + " of " + report.cases() + " stand in smaller groups ("
                        + percent(report.below(), report) + "): they came in by import or were invented.";
        return "k = " + report.k() + " (asked: " + report.kAsked() + "): the smallest group that looks alike has "
                + report.k() + ". " + small + " Distinct l = " + report.distinctL()
                + ": of the least varied group "
                + (report.distinctL() == 1 ? "one thing" : report.distinctL() + " things")
                + " could be learned of how it went"
                + (report.distinctL() == 1 ? ", so who is known to be in it is known to have it." : ".");
    }

    private void sizes(AnonymityReport report) {
        if (report.sizes().isEmpty()) {
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("group of", "groups", "cases"));
        report.sizes().stream()
                .filter(size -> size.size() < report.kAsked())
                .forEach(size -> rows.add(row(Integer.toString(size.size()), size.groups(), size.cases())));
        List<AnonymityReport.Sizes> enough = report.sizes().stream()
                .filter(size -> size.size() >= report.kAsked())
                .toList();
        rows.add(row(
                report.kAsked() + " or more",
                enough.stream().mapToInt(AnonymityReport.Sizes::groups).sum(),
                enough.stream().mapToInt(AnonymityReport.Sizes::cases).sum()));
        out.append('\n').append(Wrap.table(width, SIZES, rows));
    }

    private static List<String> row(String size, int groups, int cases) {
        return List.of(size, Integer.toString(groups), Integer.toString(cases));
    }

    private String mildest(AnonymityReport report, AnonymityReport.Mildest mildest) {
        String asked = "For k = " + mildest.k() + ": ";
        return mildest.recoding()
                .map(recoding -> asked + "the mildest that holds nothing back loses " + share(recoding.lossShare())
                        + " and tells " + ways(report, recoding) + ".")
                .orElse(asked + "nothing short of holding cases back reaches it.");
    }

    private void tried(AnonymityReport report) {
        line(
                0,
                "The mildest ways that hold back less than every milder one, of "
                        + report.recodings().size() + " tried. Loss: 0 % all told, 100 % nothing told.");
        out.append('\n');
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("loss", "k", "l", "held back", "told"));
        int least = Integer.MAX_VALUE;
        for (AnonymityReport.Coarser one : report.recodings()) {
            if (one.heldBack() < least && rows.size() <= SHOWN) {
                least = one.heldBack();
                rows.add(List.of(
                        share(one.lossShare()),
                        Integer.toString(one.k()),
                        Integer.toString(one.distinctL()),
                        Integer.toString(one.heldBack()),
                        ways(report, one)));
            }
        }
        out.append(Wrap.table(width, TRIED, rows));
    }

    private static String ways(AnonymityReport report, AnonymityReport.Coarser one) {
        List<String> changed = new ArrayList<>();
        for (int i = 0; i < one.ways().size(); i++) {
            AnonymityReport.Told told = report.told().get(i);
            if (!one.ways().get(i).equals(told.ways().get(0))) {
                changed.add(told.name() + " " + one.ways().get(i));
            }
        }
        return changed.isEmpty() ? "everything as it is" : String.join(", ", changed);
    }

    private static String percent(int part, AnonymityReport report) {
        return share((double) part / report.cases());
    }

    private static String share(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private void title(String text) {
        out.append(out.length() == 0 ? "" : "\n").append(text).append('\n');
        out.append("=".repeat(text.length())).append('\n');
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
