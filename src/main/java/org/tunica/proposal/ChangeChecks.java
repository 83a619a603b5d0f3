package org.tunica.proposal;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tunica.casefile.FaultyInput;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.review.Probe;
import org.tunica.review.Remark;
import org.tunica.review.RuleReview;

/** Checks a change from end to end. */
public final class ChangeChecks {
    private final WorkingCopy copy;
    private final Loading loading;
    private final LocalDate day;

    /**
     * Checks of a working copy.
     *
     * @param day on which reviews are judged, UTC
     */
    public ChangeChecks(WorkingCopy copy, Loading loading, LocalDate day) {
        this.copy = copy;
        this.loading = loading;
        this.day = day;
    }

    /** Runs every check. What does not load is checked no further. */
    public CheckedChange run() {
        try {
            ChangeRecord record = copy.record();
            Bundle before = copy.before();
            Bundle after = copy.after();
            return loaded(before, loading.load(before), after, loading.load(after), record);
        } catch (FaultyInput e) {
            List<String> faults = e.faults().stream().map(Object::toString).toList();
            Check check = new Check(Check.Question.LOADING, Check.Result.BAR, faults);
            return new CheckedChange(
                    copy.opening(), day, Optional.empty(), Optional.empty(), List.of(check), List.of(), lines());
        }
    }

    private CheckedChange loaded(Bundle before, RuleReview was, Bundle after, RuleReview is, ChangeRecord record) {
        Touched touched = Touched.between(was, is);
        RecordChecks records = new RecordChecks(before, after, record, touched);
        SupportChecks support = new SupportChecks(is.knowledge(), is.rules(), touched);
        List<Remark> remarks = is.remarks();
        List<Check> checks = List.of(
                Check.told(Check.Question.LOADING, List.of()),
                records.record(),
                records.earlierRecords(),
                remarks(was, remarks),
                new ShownChecks(copy, is, touched).check(),
                boundaries(is, touched),
                support.sources(),
                support.reviewDates(day),
                support.unverified(),
                support.hazards(withoutHazard(remarks)),
                support.retired(record.retires()));
        return new CheckedChange(
                copy.opening(),
                day,
                Optional.of(CheckedChange.Told.of(record)),
                Optional.of(new CheckedChange.Covers(after.digest(), ScenarioTexts.digest(copy.scenarios()))),
                checks,
                touched.differences(),
                lines());
    }

    private static List<String> withoutHazard(List<Remark> remarks) {
        return remarks.stream()
                .filter(remark -> remark.kind() == Remark.Kind.NO_HAZARD)
                .map(Remark::toString)
                .toList();
    }

    /** Faults bar; a remark nobody judged warns when the change brought it. */
    private static Check remarks(RuleReview before, List<Remark> remarks) {
        Set<String> known =
                before.remarks().stream().map(Remark::sentence).collect(Collectors.toCollection(HashSet::new));
        List<String> bars = remarks.stream()
                .filter(remark -> remark.fault() && remark.kind() != Remark.Kind.NO_HAZARD)
                .map(Remark::toString)
                .toList();
        List<String> warns = remarks.stream()
                .filter(remark -> remark.open() && !known.contains(remark.sentence()))
                .map(Remark::toString)
                .toList();
        return Check.of(Check.Question.REMARKS, bars, warns);
    }

    private static Check boundaries(RuleReview review, Touched touched) {
        List<String> bars = review.probed().stream()
                .filter(outcome -> !outcome.asExpected())
                .map(outcome ->
                        outcome.probe().rule() + " at " + outcome.probe().what() + ": says "
                                + outcome.said().words() + ", means "
                                + outcome.probe().expected().words())
                .toList();
        if (!bars.isEmpty()) {
            return new Check(Check.Question.BOUNDARIES, Check.Result.BAR, bars);
        }
        return Check.told(
                Check.Question.BOUNDARIES,
                review.unprobed().stream()
                        .filter(one -> touched.has(one.rule()))
                        .map(ChangeChecks::unprobed)
                        .toList());
    }

    private static String unprobed(Probe.Unprobed one) {
        return one.rule() + " was not tried at " + one.what() + ": " + one.why();
    }

    private String lines() {
        try {
            SortedMap<String, String> after = new TreeMap<>(copy.after().texts());
            after.putAll(copy.scenarios());
            SortedMap<String, String> before = new TreeMap<>(copy.before().texts());
            before.putAll(copy.scenariosBefore());
            return LineChanges.between(before, after);
        } catch (FaultyInput e) {
            return ""; // told by the loading
        }
    }
}
