package org.tunica.fhir;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Allergies or conditions of a record as the list of a case, which is known as a whole or not at all. */
final class History {
    private static final Set<String> REFUTED = Set.of("refuted", "entered-in-error");
    private static final Set<String> IN_DOUBT = Set.of("unconfirmed", "provisional", "differential");
    private static final Set<String> OVER = Set.of("inactive", "remission", "resolved");

    private final String kind;
    private final String list;
    private final Site site;
    private final Values values;
    private final Notes notes;
    private final Set<String> words = new TreeSet<>();
    private final List<Resource> counted = new ArrayList<>();
    private boolean none;
    private boolean gap;

    /**
     * A history to be read.
     *
     * @param kind of its words
     * @param list its name in a case
     */
    History(String kind, String list, Site site, Values values, Notes notes) {
        this.kind = kind;
        this.list = list;
        this.site = site;
        this.values = values;
        this.notes = notes;
    }

    /** The words of the list; nothing when the record does not make it whole. */
    Optional<Set<String>> read(List<Resource> entries, boolean saidComplete) {
        entries.forEach(this::entry);
        if (none && !words.isEmpty()) {
            notes.faults()
                    .add(counted.get(0).part().path(), "the record says that there are no " + list + " and lists some");
        }
        boolean trusted = site.trusts(list);
        if ((none || saidComplete || trusted) && (!gap || trusted)) {
            return Optional.of(words);
        }
        String why = gap ? "an entry of the list could not be read" : "nothing says that the list is complete";
        counted.forEach(
                one -> notes.add(one.unused("recognised, but " + why + ", so the case leaves " + list + " unknown")));
        return Optional.empty();
    }

    private void entry(Resource entry) {
        String verification = state(entry, "verificationStatus");
        if (REFUTED.contains(verification)) {
            notes.add(entry.unused("is " + verification));
            return;
        }
        Optional<String> word = values.word(kind, entry.part(), "code", entry);
        if (word.isEmpty()) {
            gap = true;
        } else if (word.get().equals(Codes.NONE)) {
            none = true;
        } else if (!word.get().equals(Codes.OTHER)) {
            ours(entry, word.get(), verification);
        }
    }

    private void ours(Resource entry, String word, String verification) {
        String clinical = state(entry, "clinicalStatus");
        if (IN_DOUBT.contains(verification) || OVER.contains(clinical)) {
            gap = true;
            notes.add(entry.unused(word + " is recorded as " + (OVER.contains(clinical) ? clinical : verification)
                    + "; whether it counts must be said by hand"));
        } else {
            words.add(word);
            counted.add(entry);
        }
    }

    private static String state(Resource entry, String field) {
        return entry.part().codings(field).stream()
                .map(Codes.Coding::code)
                .findFirst()
                .orElse("");
    }
}
