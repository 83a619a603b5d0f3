package org.tunica.wording;

import org.tunica.knowledge.Standing;
import org.tunica.plan.Reason;
import org.tunica.rules.Conclusion;

/** A reason as a line: what it says, its rule, and where it comes from. What is unverified bears an asterisk. */
public final class ReasonWords {
    private ReasonWords() {}

    /** What could harm for good must not read like counsel. */
    public static String lead(Reason caution) {
        return switch (caution.strength().orElse(Conclusion.Strength.MODERATE)) {
            case FIRST_CHOICE, STRONG -> "strong caution: ";
            case MODERATE -> "caution: ";
            case SLIGHT -> "counsel: ";
        };
    }

    /** What it says and which rule says so; what is in doubt is named. */
    public static String line(Reason caution) {
        String doubt =
                caution.inDoubt().isEmpty() ? "" : "; in doubt, not recorded: " + String.join(", ", caution.inDoubt());
        return caution.title() + " (" + caution.rule() + mark(caution) + ")" + doubt;
    }

    /** What it says and because of what. */
    public static String text(Reason reason) {
        String doubt = reason.inDoubt().isEmpty()
                ? ""
                : " (in doubt, not recorded: " + String.join(", ", reason.inDoubt()) + ")";
        return reason.title() + ", because " + reason.says() + doubt;
    }

    /** Source, standing, change record and limits, in brackets. */
    public static String origin(Reason reason) {
        String limits = reason.limits().isEmpty() ? "" : "; limits " + String.join(", ", reason.limits());
        return " [" + source(reason) + limits + "]";
    }

    /** Source, standing and change record. */
    public static String source(Reason reason) {
        return reason.source() + ", " + reason.standing().word() + ", change " + reason.change();
    }

    static String mark(Reason reason) {
        return reason.standing() == Standing.UNVERIFIED ? "*" : "";
    }
}
