package org.tunica.releases;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.governance.Story;
import org.tunica.store.Act;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.FeedbackBook;
import org.tunica.store.GivenCard;
import org.tunica.store.HookFeedback;
import org.tunica.store.KeptDocument;
import org.tunica.store.Page;
import org.tunica.store.Store;
import org.tunica.store.Subject;
import org.tunica.watching.Answered;
import org.tunica.watching.Heard;
import org.tunica.watching.Stretches;
import org.tunica.watching.Watch;
import org.tunica.watching.WatchReport;

/** Looks at the rules in use: at the advices that are kept, and at what people did with cards. */
public final class WatchDesk {
    private static final int LONGEST_STRETCH_DAYS = 3_650;

    /** An advice may be long; few are held at once. */
    private static final int ADVICES_AT_ONCE = 20;

    private static final List<String> OF_OPTION = List.of("reasons", "cautions", "needs");

    private final Store store;
    private final Engines engines;
    private final ReleaseRecords records;
    private final Clock clock;

    /** What is kept in a store, under the release in force at the time of a clock. */
    public WatchDesk(Store store, Engines engines, Clock clock) {
        this.store = store;
        this.engines = engines;
        this.records = new ReleaseRecords(store);
        this.clock = clock;
    }

    /**
     * One look; the audit trail tells who looked.
     *
     * @param days of the later stretch, which ends now
     * @param daysBefore of the stretch before it
     * @throws FaultyInput when a stretch is no stretch, or the release in force does not verify
     */
    public WatchReport look(Actor by, int days, int daysBefore) {
        mustBeDays("days", days);
        mustBeDays("days before", daysBefore);
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        Stretches stretches = Stretches.endingAt(now.plusMillis(1), days, daysBefore);
        LocalDate day = LocalDate.ofInstant(now, ZoneOffset.UTC);
        Engines.Engine engine = engines.inForce();
        String release = engine.version().orElse("draft");
        Watch.Seen seen =
                new Watch.Seen(release, engine.version().map(this::reviewBy), heard(stretches), answered(stretches));
        Watch watch =
                new Watch(engine.tunica().knowledge(), engine.tunica().review().rules());
        WatchReport report = watch.report(seen, stretches, day);
        store.audit().note(by, Act.RULES_WATCHED, new Subject("release", release));
        return report;
    }

    private static void mustBeDays(String place, int days) {
        if (days < 1 || days > LONGEST_STRETCH_DAYS) {
            throw new FaultyInput(
                    "watch", List.of(new Fault(place, "must be 1 to " + LONGEST_STRETCH_DAYS + " days, is " + days)));
        }
    }

    private LocalDate reviewBy(String version) {
        LocalDate planned = records.release(version).files().manifest().reviewBy();
        return records.timeline().story(version).flatMap(Story::reviewBy).orElse(planned);
    }

    private List<Heard> heard(Stretches stretches) {
        List<Heard> heard = new ArrayList<>();
        Page page = Page.newest(ADVICES_AT_ONCE);
        while (true) {
            List<KeptDocument> documents = store.documents().newest(DocumentKind.ADVICE, page);
            documents.stream()
                    .filter(document -> !document.stamp().at().isBefore(stretches.from()))
                    .forEach(document -> heard.add(heard(document)));
            if (documents.size() < ADVICES_AT_ONCE || olderThan(stretches, documents)) {
                return heard;
            }
            page = page.after(documents.get(documents.size() - 1).stamp());
        }
    }

    private static boolean olderThan(Stretches stretches, List<KeptDocument> documents) {
        return documents.get(documents.size() - 1).stamp().at().isBefore(stretches.from());
    }

    private static Heard heard(KeptDocument kept) {
        String body = kept.document().body();
        String what = "advice " + kept.number() + " of case " + kept.document().caseRef();
        Faults faults = new Faults();
        FieldReader advice =
                new FieldReader(JsonText.parseRecord(what, body.getBytes(StandardCharsets.UTF_8)), "$", faults);
        Set<String> rules = new TreeSet<>();
        parts(advice, "segments").forEach(segment -> {
            ids(segment, "hardCase").forEach(rules::add);
            parts(segment, "options")
                    .forEach(option ->
                            OF_OPTION.forEach(list -> ids(option, list).forEach(rules::add)));
        });
        faults.throwIfAny(what);
        return new Heard(
                kept.document().caseRef(),
                kept.stamp().at(),
                kept.document().origin().releaseVersion(),
                rules);
    }

    private static List<FieldReader> parts(FieldReader reader, String field) {
        return reader.objects(field).orElse(List.of());
    }

    private static Stream<String> ids(FieldReader reader, String field) {
        return parts(reader, field).stream().map(reason -> reason.requiredText("rule"));
    }

    private List<Answered> answered(Stretches stretches) {
        Map<String, FeedbackBook.Kept> last = new LinkedHashMap<>();
        feedback(kept -> !kept.feedback().outcomeAt().isBefore(stretches.turn())
                        && kept.feedback().outcomeAt().isBefore(stretches.to()))
                .forEach(kept -> last.merge(kept.feedback().card(), kept, WatchDesk::later));
        return last.values().stream().map(this::answered).toList();
    }

    /** Whoever answers a card again has changed their mind, and the last word counts; of two at one moment the one kept last. */
    private static FeedbackBook.Kept later(FeedbackBook.Kept keptLast, FeedbackBook.Kept keptBefore) {
        return keptBefore.feedback().outcomeAt().isAfter(keptLast.feedback().outcomeAt()) ? keptBefore : keptLast;
    }

    /** Why a card was set aside, as its report says: a code, or that there were words of their own, never the words. */
    public static Optional<String> reason(HookFeedback report) {
        return Feedback.reason(report.body());
    }

    /** Reports of a kind, the last one first. */
    public List<FeedbackBook.Kept> feedback(Predicate<FeedbackBook.Kept> wanted) {
        List<FeedbackBook.Kept> found = new ArrayList<>();
        Page page = Page.newest(Page.LONGEST);
        while (true) {
            List<FeedbackBook.Kept> kept = store.feedback().newest(page);
            kept.stream().filter(wanted).forEach(found::add);
            if (kept.size() < Page.LONGEST) {
                return found;
            }
            page = page.after(kept.get(kept.size() - 1).stamp());
        }
    }

    private Answered answered(FeedbackBook.Kept kept) {
        Optional<GivenCard> card = store.cards().one(kept.feedback().card());
        return new Answered(
                card.map(GivenCard::rules).orElse(Set.of()),
                card.map(GivenCard::technique).filter(id -> !id.isEmpty()),
                answer(kept.feedback().outcome()),
                reason(kept.feedback()),
                found(kept));
    }

    private static Answered.Answer answer(String outcome) {
        return outcome.equals(Answered.Answer.ACCEPTED.word()) ? Answered.Answer.ACCEPTED : Answered.Answer.OVERRIDDEN;
    }

    /** The last word counts. */
    private Optional<Answered.Found> found(FeedbackBook.Kept kept) {
        return store
                .feedback()
                .judgements(
                        kept.feedback().card(),
                        kept.feedback().outcome(),
                        kept.feedback().outcomeAt())
                .stream()
                .reduce((earlier, later) -> later)
                .map(last -> Answered.Found.valueOf(last.judgement().found().name()));
    }
}
