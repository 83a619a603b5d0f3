package org.tunica.library;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.outcomes.AuditQuestion;

/** What was asked for by address, as a question. */
final class AskedResults {
    private AskedResults() {}

    /**
     * The question.
     *
     * @throws FaultyInput when a year is none
     */
    static AuditQuestion question(ResultsPage.Typed typed) {
        List<Fault> faults = new ArrayList<>();
        OptionalInt from = year("from", typed.from(), faults);
        OptionalInt to = year("to", typed.to(), faults);
        if (typed.technique().isEmpty() && !typed.against().isEmpty()) {
            faults.add(new Fault("against", "needs a technique that it is held against"));
        }
        if (!faults.isEmpty()) {
            throw new FaultyInput("results", faults);
        }
        boolean compared = !typed.against().isEmpty();
        return new AuditQuestion(
                Optional.of(typed.site()).filter(site -> !site.isEmpty()),
                Optional.of(typed.technique()).filter(id -> !id.isEmpty() && !compared),
                from,
                to,
                compared ? List.of(typed.technique(), typed.against()) : List.of());
    }

    private static OptionalInt year(String place, String text, List<Fault> faults) {
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (!text.matches("(19|20)[0-9]{2}")) {
            faults.add(new Fault(place, "must be a year such as 2024, or left empty, is \"" + text + "\""));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Integer.parseInt(text));
    }

    /** The same as part of an address. */
    static String query(ResultsPage.Typed typed) {
        StringBuilder query = new StringBuilder();
        add("site", typed.site(), query);
        add("technique", typed.technique(), query);
        add("against", typed.against(), query);
        add("from", typed.from(), query);
        add("to", typed.to(), query);
        add("invented", typed.invented() ? "yes" : "", query);
        return query.toString();
    }

    private static void add(String name, String value, StringBuilder query) {
        if (!value.isEmpty()) {
            query.append(query.length() == 0 ? '?' : '&').append(name).append('=');
            query.append(URLEncoder.encode(value, StandardCharsets.UTF_8));
        }
    }
}
