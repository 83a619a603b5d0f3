package org.tunica.proposal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.ChangeRecord;
import org.tunica.knowledge.RecordLists;

/** Whether the record of a change tells all of it, and leaves what earlier records tell. */
final class RecordChecks {
    private static final String RECORDS = "rules/changes/";
    private static final Set<ChangeRecord.Status> OPEN =
            EnumSet.of(ChangeRecord.Status.DRAFT, ChangeRecord.Status.IN_REVIEW);

    private final Bundle before;
    private final Bundle after;
    private final ChangeRecord record;
    private final Touched touched;

    RecordChecks(Bundle before, Bundle after, ChangeRecord record, Touched touched) {
        this.before = before;
        this.after = after;
        this.record = record;
        this.touched = touched;
    }

    Check record() {
        List<String> bars = new ArrayList<>();
        if (touched.nothing()) {
            bars.add("nothing differs from what the change began with");
        }
        if (!OPEN.contains(record.status())) {
            bars.add("record " + record.number() + " calls itself "
                    + record.status().word() + "; it must be draft or in-review until it is signed");
        }
        if (record.reason().equals(NewRecord.NO_REASON)) {
            bars.add("record " + record.number() + " gives no reason yet; the author writes one");
        }
        touched.newRecords().stream()
                .filter(number -> !number.equals(record.number()))
                .forEach(number -> bars.add("record " + number + " is new, too; one change brings one record"));
        lists(bars);
        namesIt(bars);
        return Check.unlessNone(Check.Question.RECORD, Check.Result.BAR, bars);
    }

    private void lists(List<String> bars) {
        RecordLists due = RecordLists.of(before, after, record.number());
        differ(bars, "rules", record.rules(), due.rules());
        differ(bars, "retires", record.retires(), due.retires());
        List<String> unlisted =
                due.limits().stream().filter(id -> !record.lists(id)).toList();
        if (!unlisted.isEmpty()) {
            bars.add("record " + record.number() + " does not list under limits: " + String.join(", ", unlisted));
        }
    }

    private void differ(List<String> bars, String field, List<String> listed, List<String> due) {
        Set<String> missing = new TreeSet<>(due);
        missing.removeAll(listed);
        Set<String> idle = new TreeSet<>(listed);
        idle.removeAll(due);
        if (!missing.isEmpty()) {
            bars.add("record " + record.number() + " does not list under " + field + ": " + String.join(", ", missing));
        }
        if (!idle.isEmpty()) {
            bars.add("record " + record.number() + " lists under " + field + " what the files do not tell: "
                    + String.join(", ", idle));
        }
    }

    /** What changed names the change by which it came to be as it is. */
    private void namesIt(List<String> bars) {
        touched.rules().stream()
                .filter(rule -> !rule.change().equals(record.number()))
                .forEach(rule -> bars.add(rule.place() + ": " + rule.id() + " changed and still names change "
                        + rule.change() + "; it must name " + record.number()));
        touched.numbers().stream()
                .filter(number -> !number.provenance().change().equals(record.number()))
                .forEach(number -> bars.add(number.id() + " changed and still names change "
                        + number.provenance().change() + "; it must name " + record.number()));
    }

    Check earlierRecords() {
        SortedMap<String, String> was = others(before);
        SortedMap<String, String> is = others(after);
        List<String> bars = was.entrySet().stream()
                .filter(record -> !record.getValue().equals(is.get(record.getKey())))
                .flatMap(record -> Stream.of(record.getKey()
                        + (is.containsKey(record.getKey()) ? " was edited" : " was removed")
                        + "; a record stays as it was, and a later one tells what came after"))
                .toList();
        return Check.unlessNone(Check.Question.EARLIER_RECORDS, Check.Result.BAR, bars);
    }

    private SortedMap<String, String> others(Bundle bundle) {
        SortedMap<String, String> others = new TreeMap<>(bundle.under(RECORDS, ".yaml"));
        others.keySet().removeIf(path -> path.startsWith(RECORDS + record.number() + "-"));
        return others;
    }
}
