package org.tunica.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.tunica.Tunica;
import org.tunica.archive.PastCaseDesk;
import org.tunica.plan.Advice;
import org.tunica.releases.Engines;
import org.tunica.releases.Shadow;
import org.tunica.session.SessionPlan;

/** The rules a command runs, and the place they came from while it is open. */
final class Consulted implements AutoCloseable {
    private final Engines.Engine engine;
    private final Optional<OpenReleases> open;
    private final boolean now;

    private Consulted(Engines.Engine engine, Optional<OpenReleases> open, boolean now) {
        this.engine = engine;
        this.open = open;
        this.now = now;
    }

    static Consulted ownRules() {
        return new Consulted(
                new Engines.Engine(Tunica.shipped(), Optional.empty(), List.of()), Optional.empty(), false);
    }

    static Consulted at(String place, Optional<String> asOf) {
        OpenReleases open = OpenReleases.asked(place);
        try {
            Engines engines = open.engines();
            Engines.Engine engine = asOf.map(engines::asOf).orElseGet(engines::inForce);
            return new Consulted(engine, Optional.of(open), asOf.isEmpty());
        } catch (RuntimeException e) {
            open.close();
            throw e;
        }
    }

    Tunica tunica() {
        return engine.tunica();
    }

    /** Past cases where the rules came from; empty for the program's own rules. */
    Optional<PastCaseDesk> pastCases() {
        return open.map(place -> new PastCaseDesk(tunica(), place.store()));
    }

    /** What the user must know of these rules; not a word of it goes into the answer. */
    void tell(PrintWriter err) {
        engine.notices().forEach(err::println);
        err.flush();
    }

    /**
     * A plan somebody brought. What its file says of its rules is believed only when those rules are at hand as a signed
     * release; else it is called a draft.
     */
    SessionPlan vouched(SessionPlan plan, PrintWriter err) {
        if (plan.release().state() == Advice.Release.State.DRAFT
                || plan.release().equals(tunica().release())) {
            return plan;
        }
        err.println("The plan says its rules were " + plan.release().version()
                + " and in force. That release is not at hand"
                + " here, so the note says DRAFT; give --data, and --as-of where another is in force now.");
        err.flush();
        return plan.asDraft();
    }

    /** After the answer was given: the next release is asked silently, if one runs as a shadow. */
    void shadow(byte[] caseJson, Advice said) {
        if (now) {
            open.ifPresent(releases -> new Shadow(releases.store(), releases.engines()).beside(engine, caseJson, said));
        }
    }

    @Override
    public void close() {
        open.ifPresent(OpenReleases::close);
    }
}
