package org.tunica.knowledge;

import java.time.LocalDate;
import java.util.List;
import org.tunica.casefile.Word;

/**
 * The record of one change of rules and limits.
 *
 * @param number four digits
 * @param rules ids of the rules it brings or changes
 * @param limits ids of the limits it brings or changes; {@code dose.*} stands for a whole group
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
        List<String> replaces) {

    /** How an entry of limits that stands for a whole group ends, as in {@code dose.*}. */
    public static final String GROUP = ".*";

    /** Whether the record lists a quantity, by id or by group. */
    public boolean lists(String quantityId) {
        return limits.stream()
                .anyMatch(limit -> limit.endsWith(GROUP)
                        ? quantityId.startsWith(limit.substring(0, limit.length() - 1))
                        : limit.equals(quantityId));
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
