package org.tunica.meeting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.tunica.plan.Advice;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.KeptCase;
import org.tunica.store.KeptDocument;
import org.tunica.store.NewDocument;
import org.tunica.store.Origin;
import org.tunica.store.Page;
import org.tunica.store.Store;

/** What is kept of the meeting: cases that were sent, their dates, and what was decided. */
public final class MeetingBoard {
    /** What an id of the meeting looks like; nothing of a case is in it. */
    static final String ID = "m-[0-9a-f]{12}";

    private final Store store;
    private final Supplier<String> ids;

    /** @param ids random ids as {@link #ID} wants them */
    MeetingBoard(Store store, Supplier<String> ids) {
        this.store = store;
        this.ids = ids;
    }

    /** Sends a case to the meeting; one that waits already keeps its id. */
    Waiting send(Actor by, KeptCase sent, Advice.Release release, Referral wanted) {
        String id = of(sent.caseRef())
                .filter(Waiting::open)
                .map(waiting -> waiting.referral().meetingId())
                .orElseGet(ids);
        Referral referral = Referral.of(id, wanted.question(), wanted.reasons(), wanted.date());
        return keep(by, sent.caseRef(), sent.version(), origin(release), referral);
    }

    /** Puts a case on the meeting of a day, or on none. */
    Waiting schedule(Actor by, Waiting waiting, Optional<String> day) {
        return again(by, waiting, waiting.referral().on(day));
    }

    /** Takes a case back that needs no meeting. */
    Waiting takeBack(Actor by, Waiting waiting) {
        return again(by, waiting, waiting.referral().takenBack());
    }

    private Waiting again(Actor by, Waiting waiting, Referral referral) {
        List<KeptDocument> sent = store.documents().of(waiting.caseRef(), DocumentKind.REFERRAL);
        Origin origin = sent.get(sent.size() - 1).document().origin();
        return keep(by, waiting.caseRef(), waiting.caseVersion(), origin, referral);
    }

    private Waiting keep(Actor by, String caseRef, long version, Origin origin, Referral referral) {
        KeptDocument kept = store.documents()
                .keep(by, new NewDocument(DocumentKind.REFERRAL, caseRef, version, origin, referral.json()));
        return waiting(kept);
    }

    /** Keeps a decision; governance hears of it in the same transaction. */
    KeptDocument decide(Actor by, Waiting waiting, long caseVersion, Decision decision, HeardOf heard) {
        Origin origin = new Origin(
                heard.advice().release().version(),
                heard.advice().release().digest(),
                heard.advice().seed());
        return store.together(() -> {
            KeptDocument kept = store.documents()
                    .keep(
                            by,
                            new NewDocument(
                                    DocumentKind.DECISION, waiting.caseRef(), caseVersion, origin, decision.json()));
            heard.tell(store, by, decision, kept.stamp().at());
            return kept;
        });
    }

    /** The case of an id, if there is one. */
    Optional<Waiting> one(String meetingId) {
        return all().stream()
                .filter(waiting -> waiting.referral().meetingId().equals(meetingId))
                .findFirst();
    }

    /** Where a case stands that was sent; empty when it never was. */
    Optional<Waiting> of(String caseRef) {
        List<KeptDocument> sent = store.documents().of(caseRef, DocumentKind.REFERRAL);
        return sent.isEmpty() ? Optional.empty() : Optional.of(waiting(sent.get(sent.size() - 1)));
    }

    /** Every case that was ever sent, the one that moved last first. */
    List<Waiting> all() {
        Map<String, Waiting> byCase = new LinkedHashMap<>();
        Page page = Page.newest(Page.LONGEST);
        while (true) {
            List<KeptDocument> sent = store.documents().newest(DocumentKind.REFERRAL, page);
            for (KeptDocument document : sent) {
                byCase.computeIfAbsent(document.document().caseRef(), ref -> waiting(document));
            }
            if (sent.size() < Page.LONGEST) {
                return new ArrayList<>(byCase.values());
            }
            page = page.after(sent.get(sent.size() - 1).stamp());
        }
    }

    /** What was decided on a case, first to last. */
    List<KeptDocument> decisions(String caseRef) {
        return store.documents().of(caseRef, DocumentKind.DECISION);
    }

    private Waiting waiting(KeptDocument document) {
        Referral referral = Referral.read(document.document().body());
        Optional<KeptDocument> decided = decisions(document.document().caseRef()).stream()
                .filter(kept ->
                        Decision.read(kept.document().body()).meetingId().equals(referral.meetingId()))
                .reduce((earlier, later) -> later);
        return new Waiting(
                document.document().caseRef(), document.document().caseVersion(), referral, document.stamp(), decided);
    }

    private static Origin origin(Advice.Release release) {
        return new Origin(release.version(), release.digest(), 0);
    }
}
