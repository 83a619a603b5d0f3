package org.tunica.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tunica.plan.Advice;
import org.tunica.statistics.SharesApart.Counted;
import org.tunica.watching.AnswerRate;
import org.tunica.watching.DueReview;
import org.tunica.watching.RuleRate;
import org.tunica.watching.UnverifiedNumber;
import org.tunica.watching.WatchReport;

/** A look at the rules in use as text. */
final class WatchText {
    private static final int PERCENT = 100;

    private final WatchReport report;
    private final int width;
    private final int most;
    private final StringBuilder out = new StringBuilder();

    /** At most so many lines of each list. */
    WatchText(WatchReport report, int width, int most) {
        this.report = report;
        this.width = width;
        this.most = most;
    }

    String all() {
        head();
        alarms();
        list("How often the rules speak", report.rates(), WatchText::rate);
        list("Cards set aside, by rule", report.ofRules(), WatchText::answers);
        list("Cards set aside, by technique", report.ofTechniques(), WatchText::answers);
        if (report.unknownCards() > 0) {
            line(0, report.unknownCards() + " answers are to cards of which nothing was kept; they count nowhere.");
        }
        oftenSetAside();
        list("Reviews overdue or soon due", report.reviews(), WatchText::review);
        list("Numbers in use that nobody checked", report.unverified(), WatchText::number);
        out.append('\n');
        line(0, Advice.CAUTION);
        return out.toString();
    }

    private void head() {
        String rules =
                report.release().equals("draft") ? "the program's own rules, a draft" : "release " + report.release();
        line(0, "A look at " + rules + " on " + report.day());
        line(
                0,
                "Now: " + day(report.stretches().turn()) + " to "
                        + day(report.stretches().to()) + ", "
                        + cases(report.casesNow()) + ". Before: "
                        + day(report.stretches().from()) + " to "
                        + day(report.stretches().turn()) + ", " + cases(report.casesBefore()) + ".");
        if (report.releases().size() > 1) {
            line(
                    0,
                    "The advices came from releases " + String.join(", ", report.releases())
                            + ": a rule may speak otherwise because it was changed.");
        }
    }

    private void alarms() {
        heading("Rules that speak more or less often than before");
        boolean compared = report.rates().stream().anyMatch(rate -> rate.drift() != RuleRate.Drift.TOO_FEW_CASES);
        if (report.alarms().isEmpty()) {
            line(2, compared ? "None." : "There are too few cases to tell.");
        }
        report.alarms().forEach(rate -> line(2, rate(rate)));
    }

    private static String rate(RuleRate rate) {
        String word =
                rate.alarms() ? " " + rate.drift().word().replace('-', ' ').toUpperCase(Locale.ROOT) : "";
        return rate.rule() + word + ": in " + share(rate.lately())
                + rate.before().map(before -> ", before in " + share(before)).orElse("") + "; " + rate.title();
    }

    private static String share(Counted counted) {
        return percent(counted.share()) + " (" + counted.events() + " of " + counted.total() + ")";
    }

    private static String answers(AnswerRate rate) {
        String looked = rate.looked() == 0
                ? "; nobody has looked at these yet"
                : "; of " + rate.looked() + " looked at later " + rate.appropriate() + " were right to be set aside";
        String reasons = rate.reasons().stream()
                .map(reason -> reason.reason() + " " + reason.count())
                .collect(Collectors.joining(", "));
        return rate.id() + ": " + rate.overridden().events() + " of "
                + rate.overridden().total() + " set aside ("
                + percent(rate.overridden().confidenceShare()) + " limits "
                + percent(rate.overridden().lowShare()) + " to "
                + percent(rate.overridden().highShare()) + ")"
                + (reasons.isEmpty() ? "" : ": " + reasons) + (rate.overridden().events() == 0 ? "" : looked) + "; "
                + rate.says();
    }

    private void oftenSetAside() {
        if (!report.oftenSetAside().isEmpty()) {
            heading("Rules that speak often and are mostly set aside");
            line(2, String.join(", ", report.oftenSetAside()));
            line(2, "That is no defect by itself: look whether it was right to set them aside.");
        }
    }

    private static String review(DueReview review) {
        return review.id() + (review.due() == DueReview.Due.OVERDUE ? " OVERDUE since " : " by ") + review.lastDay()
                + "; " + review.title();
    }

    private static String number(UnverifiedNumber number) {
        return number.id() + ", " + number.value() + " (" + number.source() + "), "
                + (number.rules().isEmpty() ? "read by a model" : "feeds " + String.join(", ", number.rules())) + "; "
                + number.says();
    }

    private <T> void list(String heading, List<T> all, Function<T, String> says) {
        heading(heading);
        if (all.isEmpty()) {
            line(2, "None.");
        }
        all.stream().limit(most).forEach(one -> line(2, says.apply(one)));
        if (all.size() > most) {
            line(2, "and " + (all.size() - most) + " more: --all shows them.");
        }
    }

    private void heading(String text) {
        out.append('\n').append(text).append(":\n");
    }

    private void line(int indent, String text) {
        out.append(Wrap.paragraph(width, indent, text));
    }

    private static String day(Instant moment) {
        return LocalDate.ofInstant(moment, ZoneOffset.UTC).toString();
    }

    private static String cases(int count) {
        return count == 1 ? "1 case" : count + " cases";
    }

    private static String percent(double share) {
        return Math.round(share * PERCENT) + " %";
    }
}
