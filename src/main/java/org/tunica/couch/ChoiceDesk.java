package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tunica.casefile.JsonText;
import org.tunica.fhir.HookFeedback;
import org.tunica.knowledge.CodeFile;
import org.tunica.plan.Advice;
import org.tunica.plan.OptionAdvice;
import org.tunica.plan.Reason;
import org.tunica.store.Actor;
import org.tunica.store.DocumentKind;
import org.tunica.store.GivenCard;
import org.tunica.store.KeptCase;
import org.tunica.store.NewDocument;
import org.tunica.store.Origin;
import org.tunica.store.Store;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps what a person chose: in the case, so that plans and papers take it; as a document, with the reason; and as what was
 * done with the first option, the same way record systems report of a card, so that one watch sees both.
 */
final class ChoiceDesk {
    /** Under which the advice page reports; a card of a record system has another one. */
    private static final String SERVICE = "tunica-page";

    private final Store store;
    private final Clock clock;

    ChoiceDesk(Store store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /**
     * Keeps a choice; all of it or nothing.
     *
     * @param seen the version whose advice was looked at
     * @param first the option that was first
     * @throws org.tunica.store.OutOfDate when the case has another version by now
     */
    void keep(
            Actor by,
            KeptCase seen,
            Advice advice,
            OptionAdvice first,
            Choice choice,
            Optional<CodeFile.OverrideReason> reason) {
        Instant at = Instant.ofEpochMilli(clock.millis());
        Advice.Release release = advice.release();
        Origin origin = new Origin(release.version(), release.digest(), advice.seed());
        store.together(() -> {
            store.cases().save(by, seen.caseRef(), seen.version(), with(seen.json(), choice));
            store.documents()
                    .keep(
                            by,
                            new NewDocument(
                                    DocumentKind.CHOICE, seen.caseRef(), seen.version(), origin, choice.json()));
            if (store.cards().one(choice.card()).isEmpty()) {
                store.cards().keep(by, spoken(choice.card(), release, first));
            }
            store.feedback().keep(by, report(choice, reason, at));
            return choice;
        });
    }

    /**
     * The card a choice answers. Who chooses again for the same segment and is shown the same first option for the same reasons
     * answers the same card: the mind was changed, nothing else was asked.
     */
    String card(String caseRef, String segment, Advice advice, OptionAdvice first) {
        return store.documents().of(caseRef, DocumentKind.CHOICE).stream()
                .map(kept -> Choice.read(kept.document().body()))
                .filter(choice -> choice.segment().equals(segment))
                .reduce((earlier, later) -> later)
                .map(Choice::card)
                .filter(card -> store.cards().one(card).equals(Optional.of(spoken(card, advice.release(), first))))
                .orElseGet(() -> UUID.randomUUID().toString());
    }

    private static GivenCard spoken(String card, Advice.Release release, OptionAdvice first) {
        return new GivenCard(
                card,
                SERVICE,
                release.version(),
                release.digest(),
                first.technique(),
                first.standing().word(),
                rules(first));
    }

    private static Set<String> rules(OptionAdvice option) {
        return Stream.of(option.reasons(), option.cautions(), option.needs())
                .flatMap(List::stream)
                .map(Reason::rule)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static org.tunica.store.HookFeedback report(
            Choice choice, Optional<CodeFile.OverrideReason> reason, Instant at) {
        boolean taken = choice.technique().equals(Optional.of(choice.first()));
        HookFeedback.Outcome outcome = taken ? HookFeedback.Outcome.ACCEPTED : HookFeedback.Outcome.OVERRIDDEN;
        Optional<HookFeedback.Reason> why = taken
                ? Optional.empty()
                : Optional.of(new HookFeedback.Reason(
                        reason.map(CodeFile.OverrideReason::system),
                        reason.map(CodeFile.OverrideReason::code),
                        choice.words()));
        HookFeedback.Entry entry =
                new HookFeedback.Entry(choice.card(), outcome, taken ? List.of(choice.card()) : List.of(), why, at);
        String body = new HookFeedback(List.of(entry)).toJson().toString();
        return new org.tunica.store.HookFeedback(SERVICE, choice.card(), outcome.word(), at, body);
    }

    /** The case with the technique chosen for its segment, or with none. */
    private static String with(String json, Choice choice) {
        JsonNode tree = JsonText.parse("case", json.getBytes(StandardCharsets.UTF_8));
        for (JsonNode limb : tree.path("limbs")) {
            for (JsonNode segment : limb.path("segments")) {
                if (segment.path("ref").asString("").equals(choice.segment())) {
                    ObjectNode node = (ObjectNode) segment;
                    node.remove("chosen");
                    choice.technique().ifPresent(id -> node.put("chosen", id));
                }
            }
        }
        return tree.toPrettyString() + "\n";
    }
}
