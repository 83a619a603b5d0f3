package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.frame.NotThere;
import org.tunica.pastcases.Finished;
import org.tunica.plan.Advice;
import org.tunica.session.SessionPlan;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptCase;
import org.tunica.store.KeptDocument;
import org.tunica.store.NewDocument;
import org.tunica.store.Origin;
import org.tunica.store.Store;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.TreatedPlan;
import org.tunica.treatment.Treatment;

/** Makes from a kept case what is kept with it. What takes long is done before anything is written. */
public final class CaseWork {
    private static final String BODY = "body";

    private final Tunica tunica;
    private final Store store;

    /** Over a release of rules and a store. */
    public CaseWork(Tunica tunica, Store store) {
        this.tunica = tunica;
        this.store = store;
    }

    /** Advises on a version of a case, the latest unless one is named, and keeps the advice. */
    public KeptDocument advise(Actor by, String caseRef, Optional<Long> version) {
        KeptCase kept = keptCase(caseRef, version);
        Advice advice = tunica.advise(read(kept));
        Origin origin = origin(advice.release(), advice.seed());
        return keep(by, DocumentKind.ADVICE, kept.caseRef(), kept.version(), origin, tunica.toJson(advice));
    }

    /** Plans the sessions of a version of a case, and keeps the plan. */
    public KeptDocument plan(Actor by, String caseRef, Optional<Long> version) {
        KeptCase kept = keptCase(caseRef, version);
        SessionPlan plan = tunica.plan(read(kept));
        Origin origin = origin(plan.release(), 0);
        return keep(by, DocumentKind.PLAN, kept.caseRef(), kept.version(), origin, tunica.toJson(plan));
    }

    /**
     * Keeps a record of what was delivered together with its note; they bear the same number.
     *
     * @throws org.tunica.casefile.FaultyInput when the record is faulty or does not belong to the plan
     */
    public KeptDocument deliver(Actor by, String caseRef, Optional<Long> planNumber, byte[] json) {
        KeptDocument planned = keptPlan(caseRef, planNumber);
        SessionPlan plan = tunica.readPlan("plan", bytes(planned));
        DeliveredSession delivered = tunica.treatments().readDelivered(BODY, json);
        String html = tunica.toHtml(tunica.treatments().note(plan, delivered).page());
        Origin origin = origin(plan.release(), 0);
        long version = planned.document().caseVersion();
        return store.together(() -> {
            KeptDocument record = keep(by, DocumentKind.DELIVERED, caseRef, version, origin, text(json));
            KeptNote note = KeptNote.of(caseRef, planned.number(), record.number(), plan.release(), html);
            return keep(by, DocumentKind.NOTE, caseRef, version, origin, note.json());
        });
    }

    /**
     * Keeps a follow-up; the answer is the treatment as a whole.
     *
     * @throws org.tunica.casefile.FaultyInput when it is faulty or does not belong to what was done
     */
    public String followUp(Actor by, String caseRef, Optional<Long> planNumber, byte[] json) {
        KeptDocument planned = keptPlan(caseRef, planNumber);
        FollowUp followUp = tunica.treatments().readFollowUp(BODY, json);
        String treatment = tunica.toJson(tunica.treatments()
                .treatment(tunica.treatments().readTreated("plan", bytes(planned)), deliveredOf(caseRef), followUp));
        Origin origin = planned.document().origin();
        keep(by, DocumentKind.FOLLOW_UP, caseRef, planned.document().caseVersion(), origin, text(json));
        return treatment;
    }

    /** What was treated: as it was delivered or, before anything was recorded of that, as the last plan has it. */
    TreatedPlan treated(String caseRef) {
        KeptDocument planned = keptPlan(caseRef, Optional.empty());
        List<DeliveredSession> delivered = deliveredOf(caseRef);
        return delivered.isEmpty()
                ? tunica.treatments().readTreated("plan", bytes(planned))
                : TreatedPlan.of(tunica.readPlan("plan", bytes(planned)).caseFile(), delivered, tunica.knowledge());
    }

    /**
     * A case of which plan, deliveries and follow-up are kept, to be offered as a past case; empty while one of them lacks.
     *
     * @param told makes what is offered of the parts
     */
    Optional<Offered> offered(String caseRef, Telling told) {
        List<KeptDocument> followUps = store.documents().of(caseRef, DocumentKind.FOLLOW_UP);
        List<DeliveredSession> delivered = deliveredOf(caseRef);
        if (followUps.isEmpty() || delivered.isEmpty()) {
            return Optional.empty();
        }
        KeptDocument planned = keptPlan(caseRef, Optional.empty());
        FollowUp followUp = tunica.treatments().readFollowUp("follow-up", bytes(followUps.get(followUps.size() - 1)));
        return Optional.of(new Offered(
                told.of(tunica.readPlan("plan", bytes(planned)).caseFile(), delivered, followUp),
                tunica.treatments().readTreated("plan", bytes(planned))));
    }

    /** What is offered, and what was planned of it. */
    record Offered(Finished finished, TreatedPlan planned) {}

    /** Puts a finished case together. */
    interface Telling {
        Finished of(CaseFile caseFile, List<DeliveredSession> delivered, FollowUp followUp);
    }

    /** What was done and how it went, by the follow-up kept last; empty while there is none. */
    Optional<Treatment> course(String caseRef) {
        List<KeptDocument> kept = store.documents().of(caseRef, DocumentKind.FOLLOW_UP);
        return kept.isEmpty()
                ? Optional.empty()
                : Optional.of(tunica.treatments()
                        .treatment(
                                tunica.treatments().readTreated("plan", bytes(keptPlan(caseRef, Optional.empty()))),
                                deliveredOf(caseRef),
                                tunica.treatments().readFollowUp("follow-up", bytes(kept.get(kept.size() - 1)))));
    }

    /** What was delivered, session by session; a record set right replaces the one before. */
    private List<DeliveredSession> deliveredOf(String caseRef) {
        TreeMap<Integer, DeliveredSession> bySession = new TreeMap<>();
        for (KeptDocument kept : store.documents().of(caseRef, DocumentKind.DELIVERED)) {
            DeliveredSession delivered = tunica.treatments().readDelivered("delivered " + kept.number(), bytes(kept));
            OptionalInt session = delivered.session();
            bySession.put(session.orElse(0), delivered);
        }
        return List.copyOf(bySession.values());
    }

    private KeptCase keptCase(String caseRef, Optional<Long> version) {
        return version.map(number -> store.cases().version(caseRef, number))
                .orElseGet(() -> store.cases().latest(caseRef))
                .orElseThrow(() -> new NotThere("case"));
    }

    private KeptDocument keptPlan(String caseRef, Optional<Long> number) {
        if (number.isPresent()) {
            return store.documents()
                    .one(caseRef, DocumentKind.PLAN, number.get())
                    .orElseThrow(() -> new NotThere("plan"));
        }
        List<KeptDocument> plans = store.documents().of(caseRef, DocumentKind.PLAN);
        if (plans.isEmpty()) {
            throw new NotThere("plan");
        }
        return plans.get(plans.size() - 1);
    }

    private CaseFile read(KeptCase kept) {
        return tunica.readCase("case", kept.json().getBytes(StandardCharsets.UTF_8));
    }

    private KeptDocument keep(
            Actor by, DocumentKind kind, String caseRef, long caseVersion, Origin origin, String body) {
        return store.documents().keep(by, new NewDocument(kind, caseRef, caseVersion, origin, body));
    }

    private static Origin origin(Advice.Release release, long seed) {
        return new Origin(release.version(), release.digest(), seed);
    }

    private static byte[] bytes(KeptDocument kept) {
        return kept.document().body().getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] json) {
        return new String(json, StandardCharsets.UTF_8);
    }
}
