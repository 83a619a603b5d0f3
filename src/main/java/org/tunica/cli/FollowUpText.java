package org.tunica.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tunica.casefile.UcumWords;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Statement;
import org.tunica.treatment.ClosureDefinition;
import org.tunica.treatment.ClosureState;
import org.tunica.treatment.Complication;
import org.tunica.treatment.Course;
import org.tunica.treatment.HeatInducedThrombusClass;
import org.tunica.treatment.ScanPlan;
import org.tunica.treatment.TreatedSegment;
import org.tunica.treatment.Treatment;
import org.tunica.wording.SettingWords;

/** How it went, as text: each leg, each segment visit by visit, the scan due next, what was closed of how many. */
final class FollowUpText {
    private static final int MARGIN = 2;
    private static final int INDENT = 6;
    private static final int DEEPER = 10;

    private final Knowledge knowledge;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    FollowUpText(Knowledge knowledge, int width) {
        this.knowledge = knowledge;
        this.width = width;
    }

    String of(Treatment treatment) {
        line(0, "Follow-up of case " + treatment.caseRef() + ".");
        line(0, treatment.caution());
        treatment.limbs().forEach(this::limb);
        out.append('\n');
        closed(treatment.closed());
        treatment.notFollowed().forEach(segment -> line(0, name(segment) + ": no follow-up recorded."));
        return out.toString();
    }

    private void limb(Course.LimbCourse limb) {
        out.append('\n');
        String title = limb.side().word().toUpperCase(Locale.ROOT) + " leg";
        line(0, title);
        out.append("=".repeat(title.length())).append('\n');
        line(
                0,
                "CEAP before: " + limb.ceapBefore().orElse("not recorded") + "; last: "
                        + limb.ceapLast().orElse("not recorded") + ".");
        line(0, severity(limb.severity()));
        line(0, "Pain of 10: " + (limb.pain().isEmpty() ? "not recorded" : pain(limb.pain())) + ".");
        limb.segments().forEach(this::segment);
    }

    private static String pain(List<Course.PainAt> pain) {
        return pain.stream()
                .map(at -> at.painOfTen() + " on " + day(at.daysAfter()))
                .collect(Collectors.joining(", "));
    }

    private static String severity(Course.SeverityChange severity) {
        if (severity.change().isPresent()) {
            int change = severity.change().getAsInt();
            return "Clinical severity (VCSS): " + severity.before().getAsInt() + " before, "
                    + severity.after().getAsInt() + " on "
                    + day(severity.daysAfter().getAsInt()) + ", change "
                    + (change > 0 ? "+" : "") + change
                    + ". No drop is established as the one that matters [S-0083].";
        }
        return "Clinical severity (VCSS): no change can be told. Before: "
                + total(severity.before().isPresent(), severity.missingBefore()) + "; after: "
                + total(severity.after().isPresent(), severity.missingAfter()) + ".";
    }

    private static String total(boolean whole, List<? extends Word> missing) {
        if (whole) {
            return "complete";
        }
        return missing.isEmpty()
                ? "not scored"
                : "no total, for these items are not graded: "
                        + missing.stream().map(FollowUpText::words).collect(Collectors.joining(", "));
    }

    private void segment(Course.SegmentCourse segment) {
        out.append('\n');
        line(MARGIN, name(segment.treated()) + ", " + SettingWords.plain(segment.treatedLengthCm()) + " cm treated.");
        line(MARGIN, definition(segment.closure()));
        segment.visits().forEach(seen -> seen(seen, segment.treatedLengthCm()));
        if (segment.visits().isEmpty()) {
            line(INDENT, "No visit recorded.");
        }
        line(INDENT, next(segment.next()));
    }

    private String definition(ClosureDefinition definition) {
        Quantity limit = knowledge.quantity(definition.limitId());
        return "Closed by the definition " + words(definition) + ": " + limit.says() + ", "
                + SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()) + " ["
                + limit.provenance().source() + ", "
                + limit.provenance().standing().word() + "].";
    }

    private void seen(Course.SeenAt seen, double treatedLengthCm) {
        line(INDENT, first(day(seen.daysAfter())) + ": " + state(seen, treatedLengthCm) + "; " + reflux(seen) + ".");
        seen.clot().ifPresent(this::clot);
        seen.complications().ifPresent(this::complications);
        seen.again()
                .filter(again -> !again.word().equals("none"))
                .ifPresent(again -> line(DEEPER, "Treated again: " + words(again) + "."));
    }

    private static String state(Course.SeenAt seen, double treatedLengthCm) {
        if (seen.state() == ClosureState.NOT_RECORDED) {
            return "whether it is closed is not recorded";
        }
        return words(seen.state()) + " ("
                + SettingWords.plain(seen.openLengthCm().orElseThrow()) + " of " + SettingWords.plain(treatedLengthCm)
                + " cm open)";
    }

    private static String reflux(Course.SeenAt seen) {
        return switch (seen.reflux()) {
            case NOT_RECORDED -> "reflux not recorded";
            case NONE_THAT_COUNTS ->
                "no reflux that counts ("
                        + SettingWords.plain(seen.refluxSeconds().orElseThrow()) + " s)";
            case CAME_BACK ->
                "reflux of " + SettingWords.plain(seen.refluxSeconds().orElseThrow()) + " s, which counts";
        };
    }

    private void clot(Course.ClotFound clot) {
        String share = clot.deepLumenPercent().isPresent()
                ? " (" + SettingWords.plain(clot.deepLumenPercent().getAsDouble()) + " % of the deep lumen)"
                : "";
        line(DEEPER, "CLOT towards the deep vein, " + clotClass(clot.thrombusClass()) + share + ".");
        line(DEEPER, statement(clot.done()));
        clot.caution().ifPresent(caution -> line(DEEPER, statement(caution)));
    }

    private static String clotClass(Optional<HeatInducedThrombusClass> found) {
        return found.map(one -> one == HeatInducedThrombusClass.UNDEFINED ? "class undefined" : "class " + one.name())
                .orElse("class not known");
    }

    private void complications(List<Complication> complications) {
        if (complications.isEmpty()) {
            line(DEEPER, "No complication.");
        }
        complications.forEach(one -> line(
                DEEPER,
                first(words(one.kind())) + ", "
                        + one.grade().map(FollowUpText::words).orElse("grade not recorded")
                        + one.clavienDindo()
                                .map(grade -> ", Clavien-Dindo " + grade.word())
                                .orElse("") + "."));
    }

    private static String next(ScanPlan.Scan scan) {
        String when = scan.fromDays() == scan.byDays()
                ? "about " + day(scan.byDays())
                : day(scan.fromDays()) + " to " + day(scan.byDays());
        return "Next scan" + (scan.optional() ? ", optional" : "") + ": " + when + " after the procedure, of "
                + scan.looksAt() + ". It " + scan.why().says() + " [" + scan.source() + ", " + scan.standing() + "].";
    }

    private void closed(List<Course.ClosedShare> shares) {
        for (Course.ClosedShare share : shares) {
            line(
                    0,
                    "Closed at the last scan: " + share.closed().events() + " of "
                            + share.closed().total() + " segments scanned (" + share.treated()
                            + " followed), by the definition " + words(share.definition()) + ".");
        }
    }

    private static String name(TreatedSegment segment) {
        return segment.ref() + ", " + segment.side().word() + " " + words(segment.vein()) + ", "
                + words(segment.level()) + ": " + segment.says();
    }

    private static String statement(Statement statement) {
        return first(statement.says()) + " [" + statement.source() + ", "
                + statement.standing().word() + "].";
    }

    private static String words(Word word) {
        return word.word().replace('-', ' ');
    }

    private static String day(long days) {
        return "day " + days;
    }

    private static String first(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }
}
