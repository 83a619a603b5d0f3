package org.tunica.couch;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;
import org.tunica.frame.Pages;
import org.tunica.store.Cases;
import org.tunica.store.KeptCase;
import tools.jackson.databind.JsonNode;

/** Reads what was typed into the form of a case, and shows it again. */
final class FormDesk {
    /** Addresses beside those of cases; a case of that name could not be opened. */
    private static final Set<String> TAKEN = Set.of("new", "import", "take-file.js");

    private final Pages pages;
    private final Tunica tunica;
    private final CaseAsks asks;

    FormDesk(Pages pages, Tunica tunica) {
        this.pages = pages;
        this.tunica = tunica;
        this.asks = CaseAsks.of(tunica.knowledge());
    }

    CaseAsks asks() {
        return asks;
    }

    TypedCase written(Typed typed) {
        return TypedCase.of(asks, typed);
    }

    /** Everything that is wrong with what was typed, by the names of the fields. */
    List<Fault> faults(Typed typed, TypedCase written) {
        List<Fault> faults = new ArrayList<>(written.faults());
        if (TAKEN.contains(typed.text("caseRef"))) {
            faults.add(new Fault("caseRef", "is a word of this program's addresses; take another one"));
        }
        faultsOf(written.json()).forEach(fault -> faults.add(new Fault(written.field(fault.place()), fault.says())));
        return faults;
    }

    /** Everything that is wrong with a case, by its places. */
    List<Fault> faultsOf(String json) {
        try {
            tunica.readCase("case", json.getBytes(StandardCharsets.UTF_8));
            return List.of();
        } catch (FaultyInput e) {
            return e.faults();
        }
    }

    Typed typed(KeptCase kept) {
        return typed(JsonText.parse("case", kept.json().getBytes(StandardCharsets.UTF_8)));
    }

    Typed typed(JsonNode tree) {
        return CaseTrees.typed(asks, tree);
    }

    String page(HttpServletRequest request, SentForm sent, List<Fault> faults) {
        boolean fresh = sent.seen() == Cases.NONE;
        String title = fresh ? "New case" : "Case " + sent.typed().text("caseRef") + ", next version";
        return pages.written(
                "case-form.jte",
                new CaseFormPage(
                        pages.frame(title, request),
                        sent.action(),
                        sent.seen(),
                        !fresh,
                        sent.notes(),
                        CaseForm.of(asks, sent.typed(), faults)));
    }
}
