package org.tunica.cli;

import java.util.Locale;
import org.tunica.plan.Advice;
import org.tunica.proposal.Check;
import org.tunica.proposal.CheckedChange;
import org.tunica.proposal.Opening;
import org.tunica.releases.HandedIn;
import org.tunica.review.Difference;

/** A proposed change as text. */
final class ChangeText {
    private static final int WORD = 7;

    private final int width;

    ChangeText(int width) {
        this.width = width;
    }

    /** What differs, in English. */
    String differences(CheckedChange change) {
        StringBuilder out = new StringBuilder(head(change));
        out.append("\nWhat differs from what it began with:\n");
        Difference.text(change.differences())
                .lines()
                .forEach(line -> out.append(Wrap.paragraph(width, line.startsWith(" ") ? 4 : 2, line.strip())));
        return out.toString();
    }

    /** What differs, every check, and what follows. */
    String all(CheckedChange change) {
        StringBuilder out = new StringBuilder(differences(change));
        out.append("\nChecks on ").append(change.day()).append(":\n");
        change.checks().forEach(check -> out.append(check(check)));
        out.append('\n').append(Wrap.paragraph(width, 0, verdict(change)));
        out.append("Document: ").append(change.digest()).append('\n');
        return out.append(Wrap.paragraph(width, 0, Advice.CAUTION)).toString();
    }

    private String head(CheckedChange change) {
        Opening opening = change.opening();
        String title = change.record().map(record -> ": " + record.title()).orElse("");
        StringBuilder out = new StringBuilder(Wrap.paragraph(width, 0, "Change " + opening.number() + title));
        out.append(Wrap.paragraph(
                width, 0, "By " + opening.author() + ", begun on " + opening.on() + " with " + began(opening)));
        change.record().ifPresent(record -> out.append(Wrap.paragraph(width, 0, "Reason: " + record.reason())));
        return out.toString();
    }

    private static String began(Opening opening) {
        return opening.release().equals("draft")
                ? "the program's own rules, a draft"
                : "release " + opening.release() + ", which was in force";
    }

    private String check(Check check) {
        String result = check.result() == Check.Result.BAR
                ? check.result().name()
                : check.result().name().toLowerCase(Locale.ROOT);
        StringBuilder out = new StringBuilder("  " + result + " ".repeat(WORD - result.length()));
        out.append(check.question().says()).append('\n');
        check.findings().forEach(finding -> out.append(Wrap.paragraph(width, WORD + 4, finding)));
        return out.toString();
    }

    private static String verdict(CheckedChange change) {
        long bars = count(change, Check.Result.BAR);
        long warns = count(change, Check.Result.WARN);
        String also = warns == 0
                ? ""
                : " " + warns + (warns == 1 ? " check warns" : " checks warn") + ": for those who sign to judge.";
        return bars == 0
                ? "Nothing bars it: it can be handed in." + also
                : bars + (bars == 1 ? " check bars it" : " checks bar it") + ": it cannot be handed in." + also;
    }

    private static long count(CheckedChange change, Check.Result result) {
        return change.checks().stream()
                .filter(check -> check.result() == result)
                .count();
    }

    /** Where a change stands, on one line. */
    static String line(HandedIn change) {
        return "Change " + change.number() + ": " + change.state().words()
                + change.release().map(version -> " (" + version + ")").orElse("") + ", by " + change.author()
                + ", last moved " + change.at() + (change.times() > 1 ? ", handed in " + change.times() + " times" : "")
                + ".";
    }
}
