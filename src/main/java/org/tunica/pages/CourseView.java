package org.tunica.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tunica.casefile.UcumWords;
import org.tunica.casefile.Word;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;
import org.tunica.knowledge.Statement;
import org.tunica.treatment.ClosureState;
import org.tunica.treatment.Complication;
import org.tunica.treatment.Course;
import org.tunica.treatment.ScanPlan;
import org.tunica.treatment.TreatedSegment;
import org.tunica.treatment.Treatment;
import org.tunica.wording.SettingWords;

/**
 * How it went after a closure, as a page shows it.
 *
 * @param notFollowed segments that were treated and are in no follow-up
 */
public record CourseView(List<SegmentCourse> segments, List<String> notFollowed) {
    /**
     * One segment.
     *
     * @param definition by which it counts as closed, with its number and source
     * @param lines visit by visit, then the scan that is due
     */
    public record SegmentCourse(String title, String definition, List<String> lines) {}

    public CourseView {
        segments = List.copyOf(segments);
        notFollowed = List.copyOf(notFollowed);
    }

    /** The view of a treatment. */
    public static CourseView of(Treatment treatment, Knowledge knowledge) {
        return new CourseView(
                treatment.limbs().stream()
                        .flatMap(limb -> limb.segments().stream())
                        .map(segment -> segment(segment, knowledge))
                        .toList(),
                treatment.notFollowed().stream().map(CourseView::title).toList());
    }

    private static SegmentCourse segment(Course.SegmentCourse course, Knowledge knowledge) {
        Quantity limit = knowledge.quantity(course.closure().limitId());
        List<String> lines = new ArrayList<>();
        course.visits().forEach(seen -> visit(lines, seen, course.treatedLengthCm()));
        lines.add(next(course.next()));
        return new SegmentCourse(
                title(course.treated()) + ", " + SettingWords.plain(course.treatedLengthCm()) + " cm treated",
                "Counts as closed by the definition " + words(course.closure()) + ": " + limit.says() + ", "
                        + SettingWords.plain(limit.value()) + UcumWords.behind(limit.unit()) + " ["
                        + limit.provenance().source() + ", "
                        + limit.provenance().standing().word() + "].",
                lines);
    }

    private static String title(TreatedSegment segment) {
        return segment.ref() + ": " + segment.side().word().toUpperCase(Locale.ROOT) + " leg, " + words(segment.vein())
                + ", " + words(segment.level()) + ", " + segment.says();
    }

    private static void visit(List<String> lines, Course.SeenAt seen, double treatedLengthCm) {
        lines.add("Day " + seen.daysAfter() + ": " + state(seen, treatedLengthCm) + "; " + reflux(seen) + "; "
                + complications(seen) + ".");
        seen.clot().ifPresent(clot -> {
            String share = clot.deepLumenPercent().isPresent()
                    ? SettingWords.plain(clot.deepLumenPercent().getAsDouble()) + " % of the deep lumen"
                    : "share of the deep lumen not recorded";
            lines.add("Day " + seen.daysAfter() + ": CLOT towards the deep vein, " + share + ". "
                    + statement(clot.done()));
        });
        if (seen.treatedAgain()) {
            lines.add("Day " + seen.daysAfter() + ": treated again, "
                    + words(seen.again().orElseThrow()) + ".");
        }
    }

    private static String state(Course.SeenAt seen, double treatedLengthCm) {
        return seen.state() == ClosureState.NOT_RECORDED
                ? "whether it is closed is NOT RECORDED"
                : words(seen.state()) + " ("
                        + SettingWords.plain(seen.openLengthCm().orElseThrow()) + " of "
                        + SettingWords.plain(treatedLengthCm) + " cm open)";
    }

    private static String reflux(Course.SeenAt seen) {
        return switch (seen.reflux()) {
            case NOT_RECORDED -> "reflux not recorded";
            case NONE_THAT_COUNTS -> "no reflux that counts";
            case CAME_BACK ->
                "reflux of " + SettingWords.plain(seen.refluxSeconds().orElseThrow()) + " s, which counts";
        };
    }

    private static String complications(Course.SeenAt seen) {
        return seen.complications()
                .map(found -> found.isEmpty()
                        ? "no complication"
                        : String.join(
                                ", ",
                                found.stream().map(CourseView::complication).toList()))
                .orElse("nobody recorded whether anything went wrong");
    }

    private static String complication(Complication one) {
        return words(one.kind()) + " (" + one.grade().map(CourseView::words).orElse("grade not recorded") + ")";
    }

    private static String next(ScanPlan.Scan scan) {
        String when = scan.fromDays() == scan.byDays()
                ? "about day " + scan.byDays()
                : "day " + scan.fromDays() + " to " + scan.byDays();
        return "Next scan" + (scan.optional() ? ", optional" : "") + ": " + when + " after the procedure, of "
                + scan.looksAt() + " [" + scan.source() + ", " + scan.standing() + "].";
    }

    private static String statement(Statement statement) {
        return statement.says().substring(0, 1).toUpperCase(Locale.ROOT)
                + statement.says().substring(1) + " [" + statement.source() + ", "
                + statement.standing().word() + "].";
    }

    private static String words(Word word) {
        return word.word().replace('-', ' ');
    }
}
