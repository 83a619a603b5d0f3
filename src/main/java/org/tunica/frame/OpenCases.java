package org.tunica.frame;

import java.nio.charset.StandardCharsets;
import org.springframework.security.core.Authentication;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.store.Act;
import org.tunica.store.KeptCase;
import org.tunica.store.Store;
import org.tunica.store.Subject;

/** Opens kept cases for whoever may read them; every look leaves a row in the audit trail. */
public final class OpenCases {
    private static final String CASE = "case";

    private final Tunica tunica;
    private final Store store;

    OpenCases(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
    }

    /**
     * The latest version of a case, and a note that somebody looked at it.
     *
     * @throws NotThere when there is none
     */
    public KeptCase looked(String caseRef, Authentication who) {
        KeptCase kept = latest(caseRef);
        note(kept, who);
        return kept;
    }

    /**
     * The latest version of a case, for a part of a page whose look was noted already or for something that notes itself.
     *
     * @throws NotThere when there is none
     */
    public KeptCase latest(String caseRef) {
        return store.cases().latest(caseRef).orElseThrow(() -> new NotThere(CASE));
    }

    /** Notes a look at a version of a case. */
    public void note(KeptCase kept, Authentication who) {
        store.audit().note(Reader.of(who).actor(), Act.VIEWED, new Subject(CASE, version(kept)));
    }

    /** A version of a case by name and number, as the trail calls it. */
    public static String version(KeptCase kept) {
        return kept.caseRef() + "/" + kept.version();
    }

    /**
     * What a version says.
     *
     * @throws org.tunica.casefile.FaultyInput when the rules in force cannot read it
     */
    public CaseFile read(KeptCase kept) {
        return tunica.readCase(CASE, kept.json().getBytes(StandardCharsets.UTF_8));
    }
}
