package org.tunica.proposal;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Word;

/**
 * One thing that is looked at in a change, and what was found.
 *
 * @param findings sentences; empty when there is nothing to say
 */
public record Check(Question question, Result result, List<String> findings) {
    public Check {
        findings = List.copyOf(findings);
    }

    /** What became of a check, the gravest last. */
    public enum Result implements Word {
        PASS,
        WARN,
        BAR
    }

    /** What is asked of a change, in the order in which it is told. */
    public enum Question implements Word {
        LOADING("Rules and knowledge load, every line of them"),
        RECORD("One change record says who, why and what"),
        EARLIER_RECORDS("Earlier change records are as they were"),
        REMARKS("The rules fit each other"),
        SCENARIOS("Scenarios show every new or changed rule"),
        BOUNDARIES("At every boundary the rules say what their words mean"),
        SOURCES("What changed rests on a source somebody read, or on an explicit agreement"),
        REVIEW_DATES("What changed is to be reviewed on a day that lies ahead"),
        UNVERIFIED("Nothing that changed is unverified"),
        HAZARDS("What holds back names its hazard"),
        RETIRED("No control of a hazard was taken out");

        private final String says;

        Question(String says) {
            this.says = says;
        }

        /** The question as a sentence that is true when the check passes. */
        public String says() {
            return says;
        }
    }

    /** Passes when nothing was found, else has a result. */
    static Check unlessNone(Question question, Result otherwise, List<String> findings) {
        return new Check(question, findings.isEmpty() ? Result.PASS : otherwise, findings);
    }

    /** Passes and tells. */
    static Check told(Question question, List<String> findings) {
        return new Check(question, Result.PASS, findings);
    }

    /** What bars, then what warns: one check of both. */
    static Check of(Question question, List<String> bars, List<String> warns) {
        List<String> all = new ArrayList<>(bars);
        all.addAll(warns);
        return new Check(question, bars.isEmpty() ? warns.isEmpty() ? Result.PASS : Result.WARN : Result.BAR, all);
    }
}
