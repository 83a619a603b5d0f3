package org.tunica.store;

import java.time.Duration;
import java.util.Optional;
import java.util.Set;

/** A store with something of every kind in it, all invented. */
final class Filled {
    static final Actor ANNA = new Actor("anna");
    static final Origin ORIGIN = new Origin("0.1.0", "sha256:abc", 7);

    private Filled() {}

    /** How many rows of the trail it makes: one for each kind of document, and twenty-one others. */
    static final int ROWS = 21 + DocumentKind.values().length;

    /** The tests that tamper know the order of the rows. */
    static void fill(Store store) {
        store.users().save(ANNA, User.fresh("anna", Set.of(Role.SPECIALIST), "{hash}one"));
        store.cases().save(ANNA, "larkspur-11", Cases.NONE, "{\"v\":1}");
        store.cases().save(ANNA, "larkspur-11", 1, "{\"v\":2}");
        store.cases().save(ANNA, "foxglove-2", Cases.NONE, "{\"note\":\"é 🦵 '\\\"\"}");
        for (DocumentKind kind : DocumentKind.values()) {
            store.documents().keep(ANNA, new NewDocument(kind, "larkspur-11", 2, ORIGIN, "{\"of\":\"" + kind + "\"}"));
        }
        KeptPastCase seen = store.pastCases().offer(ANNA, "p-1", "{\"id\":\"p-1\"}");
        store.pastCases().offer(ANNA, "p-2", "{\"id\":\"p-2\"}");
        store.pastCases().release(ANNA, seen, "{\"id\":\"p-1\"}");
        store.pastCases().refuse(ANNA, "p-2");
        store.users().addKey(ANNA, new UserKey("anna", "k1", "sign-release", "MCowBQYDK2VwAyEA"));
        store.users().signInFailed("anna", 5, Duration.ofMinutes(15));
        store.feedback().keep(ANNA, new HookFeedback("plan", "card-1", "accepted", SteppingClock.START, "{}"));
        store.users().withdrawKey(ANNA, "anna", "k1", KeyEnd.LOST);
        store.releases().add(ANNA, "1.0.0", "sha256:" + "0".repeat(64), "5:a.txt,2:é\n,");
        store.releases()
                .step(
                        ANNA,
                        new NewStep("1.0.0", Act.RELEASE_BUILT, SteppingClock.START, Optional.empty(), "é 'first'"));
        store.releases().sign(ANNA, Act.RELEASE_SIGNED, "1.0.0", "{\"value\":\"é\"}");
        store.releases().shadowRun(ANNA, "1.0.0", "0.9.0", "{}");
        store.changes()
                .step(
                        ANNA,
                        new NewChangeStep(
                                "0091", Act.CHANGE_SUBMITTED, "anna", "sha256:d", "sha256:r", "{}", "1:a,1:é,", ""));
        store.cards()
                .keep(
                        ANNA,
                        new GivenCard("card-1", "plan", "0.1.0", "sha256:abc", "laser", "careful", Set.of("EXC-007")));
        store.feedback()
                .judge(
                        ANNA,
                        new Judgement(
                                "card-1",
                                "accepted",
                                SteppingClock.START,
                                Judgement.Finding.APPROPRIATE,
                                "anna",
                                "as the scan showed"));
        store.audit().note(ANNA, Act.VIEWED, new Subject("case", "larkspur-11/2"));
    }
}
