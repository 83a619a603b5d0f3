package org.tunica.store;

import static org.tunica.store.Column.number;
import static org.tunica.store.Column.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as migrations made it: what is generic over tables (audit, check, backup) reads it here.
 *
 * @param subject the kind of thing it keeps, as the audit trail names it; empty for the trail itself
 * @param keys how many of the first columns name a row
 * @param columns all columns; those of a kept row end with its seal and its audit number
 */
record Table(String name, String subject, int keys, List<Column> columns) {
    static final Table AUDIT = new Table(
            "audit",
            "",
            1,
            List.of(
                    number("number"),
                    number("at_ms"),
                    text("actor"),
                    text("act"),
                    text("subject_kind"),
                    text("subject_id"),
                    text("content"),
                    text("previous"),
                    text("hash")));

    static final Table CASES = kept("cases", "case", 2, text("case_ref"), number("version"), text("body"));

    static final Table DOCUMENTS = kept(
            "documents",
            "document",
            3,
            text("case_ref"),
            text("kind"),
            number("number"),
            number("case_version"),
            text("release_version"),
            text("release_digest"),
            number("seed"),
            text("body"));

    static final Table PAST_CASES = kept("past_cases", "past-case", 1, text("id"), text("state"), text("line"));

    static final Table USERS = kept(
            "users",
            "user",
            1,
            text("name"),
            number("version"),
            text("state"),
            text("roles"),
            text("password_hash"),
            number("failed_sign_ins"),
            number("locked_until_ms"));

    static final Table USER_KEYS = kept(
            "user_keys",
            "key",
            2,
            text("user_name"),
            text("key_id"),
            text("purpose"),
            text("public_key"),
            text("state"));

    static final Table FEEDBACK = kept(
            "feedback",
            "feedback",
            3,
            text("card"),
            text("outcome"),
            number("outcome_at_ms"),
            text("service"),
            text("body"));

    static final Table RELEASES = kept("releases", "release", 1, text("version"), text("digest"), text("files"));

    static final Table RELEASE_STEPS = kept(
            "release_steps",
            "release-step",
            2,
            text("version"),
            number("number"),
            text("kind"),
            number("from_ms"),
            text("review_by"),
            text("reason"));

    static final Table RELEASE_SIGNATURES =
            kept("release_signatures", "release-signature", 2, text("version"), number("number"), text("body"));

    static final Table KEY_WITHDRAWALS =
            kept("key_withdrawals", "key-end", 2, text("user_name"), text("key_id"), text("reason"));

    static final Table SHADOW_RUNS =
            kept("shadow_runs", "shadow-run", 2, text("shadow"), number("number"), text("in_force"), text("body"));

    /** Every table whose rows the audit trail tells of; a table stands after those it refers to. */
    static final List<Table> KEPT = List.of(
            CASES,
            DOCUMENTS,
            PAST_CASES,
            USERS,
            USER_KEYS,
            KEY_WITHDRAWALS,
            FEEDBACK,
            RELEASES,
            RELEASE_STEPS,
            RELEASE_SIGNATURES,
            SHADOW_RUNS);

    private static Table kept(String name, String subject, int keys, Column... columns) {
        List<Column> all = new ArrayList<>(List.of(columns));
        all.add(text("seal"));
        all.add(number("audit_number"));
        return new Table(name, subject, keys, List.copyOf(all));
    }

    int place(String column) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name().equals(column)) {
                return i;
            }
        }
        throw new IllegalArgumentException(name + " has no column " + column);
    }

    String names(String prefix) {
        return columns.stream().map(column -> prefix + column.name()).collect(Collectors.joining(", "));
    }

    String insert() {
        String marks = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
        return "insert into " + name + " (" + names("") + ") values (" + marks + ")";
    }

    /** Puts a row in the place of the one with the same key. */
    String replace() {
        String key = columns.stream().limit(keys).map(Column::name).collect(Collectors.joining(", "));
        String rest = columns.stream()
                .skip(keys)
                .map(column -> column.name() + " = excluded." + column.name())
                .collect(Collectors.joining(", "));
        return insert() + " on conflict (" + key + ") do update set " + rest;
    }
}
