package org.tunica.knowledge;

import java.time.LocalDate;
import java.util.List;
import org.tunica.casefile.Faults;
import org.tunica.casefile.Word;

/**
 * The record of one change of rules and limits.
 *
 * @param number four digits
 * @param rules ids of the rules it brings or changes
 * @param limits ids of the limits it brings or changes; {@code dose.*} stands for a whole group
 * @param retires ids of rules and limits that end with it and are never used again
 */
public record ChangeRecord(
        String number,
        String title,
        Status status,
        List<Person> authors,
        List<Person> reviewers,
        List<Person> approvers,
        String reason,
        List<String> sources,
        List<String> rules,
        List<String> limits,
        LocalDate effective,
        List<String> replaces,
        List<String> retires) {

    /** How an entry of limits that stands for a whole group ends, as in {@code dose.*}. */
    public static final String GROUP = ".*";

    /** Whether the record lists a quantity, by id or by group. */
    public boolean lists(String quantityId) {
        return limits.stream()
                .anyMatch(limit -> limit.endsWith(GROUP)
                        ? quantityId.startsWith(limit.substring(0, limit.length() - 1))
                        : limit.equals(quantityId));
    }

    /**
     * Reads a record by itself, unchecked against anything else.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault, file and line
     */
    public static ChangeRecord read(String file, String yaml) {
        Faults faults = new Faults();
        ChangeRecord record = ChangeReader.read(YamlText.read(file, yaml, faults));
        faults.throwIfAny(file);
        return record;
    }

    /** The record as a file of {@code rules/changes/}. */
    public String toYaml() {
        return ProposalText.of(this);
    }

    /** The same record with what it lists filled in. */
    public ChangeRecord listing(RecordLists lists) {
        return new ChangeRecord(
                number,
                title,
                status,
                authors,
                reviewers,
                approvers,
                reason,
                lists.sources(),
                lists.rules(),
                lists.limits(),
                effective,
                replaces,
                lists.retires());
    }

    /** The same record with another reason. */
    public ChangeRecord because(String newReason) {
        return new ChangeRecord(
                number, title, status, authors, reviewers, approvers, newReason, sources, rules, limits, effective,
                replaces, retires);
    }

    /** Where a change stands. */
    public enum Status implements Word {
        DRAFT,
        IN_REVIEW,
        SIGNED,
        REFUSED,
        WITHDRAWN
    }

    /** Someone by role and initials. */
    public record Person(String role, String initials) {}
}
