package org.tunica.fhir;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Word;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What people did with cards. */
public record HookFeedback(List<Entry> entries) {
    private static final int MOST_ENTRIES = 1_000;
    private static final int LONGEST_COMMENT = 4_000;

    public HookFeedback {
        entries = List.copyOf(entries);
    }

    /** What became of a card. */
    public enum Outcome implements Word {
        ACCEPTED,
        OVERRIDDEN
    }

    /**
     * What became of one card.
     *
     * @param card its uuid
     * @param acceptedSuggestions uuids of the suggestions taken
     * @param reason why it was set aside
     * @param at when
     */
    public record Entry(
            String card, Outcome outcome, List<String> acceptedSuggestions, Optional<Reason> reason, Instant at) {
        /** The same for the same message sent twice. */
        public String key() {
            return card + "|" + outcome.word() + "|" + at;
        }
    }

    /** Why a card was set aside: a code, words, or both. */
    public record Reason(Optional<String> system, Optional<String> code, Optional<String> comment) {}

    /**
     * Reads what a record system reports. The reason may stand in {@code overrideReason.reason} or, as older systems have
     * it, in {@code overrideReason} itself.
     *
     * @param what the name of the input, for messages
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static HookFeedback read(String what, byte[] bytes) {
        Faults faults = new Faults();
        FieldReader reader = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        List<FieldReader> entries =
                reader.required("feedback", reader.objects("feedback")).orElse(List.of());
        if (entries.size() > MOST_ENTRIES) {
            reader.fault("feedback", "holds " + entries.size() + " entries; at most " + MOST_ENTRIES + " are read");
            faults.throwIfAny(what);
        }
        List<Entry> read = new ArrayList<>();
        entries.forEach(entry -> read.add(entry(entry)));
        faults.throwIfAny(what);
        return new HookFeedback(read);
    }

    private static Entry entry(FieldReader entry) {
        String card = uuid(entry, "card");
        Outcome outcome = entry.requiredWord("outcome", Outcome.class);
        List<String> accepted = new ArrayList<>();
        entry.objects("acceptedSuggestions").orElse(List.of()).forEach(one -> accepted.add(uuid(one, "id")));
        if (outcome == Outcome.ACCEPTED && entry.has("outcome") && accepted.isEmpty()) {
            entry.fault("acceptedSuggestions", "must name what was accepted");
        }
        Optional<Reason> reason = entry.object("overrideReason").map(HookFeedback::reason);
        return new Entry(card, outcome, accepted, reason, at(entry));
    }

    private static Reason reason(FieldReader reader) {
        FieldReader coding = reader.object("reason").orElse(reader);
        Optional<String> code = coding.text("code");
        Optional<String> comment = reader.text("userComment");
        comment.filter(text -> text.length() > LONGEST_COMMENT)
                .ifPresent(text -> reader.fault("userComment", "is longer than " + LONGEST_COMMENT + " characters"));
        if (code.isEmpty() && comment.isEmpty() && !reader.has("reason")) {
            reader.fault("reason", "a reason, a comment or both must be given");
        }
        if (code.isEmpty() && reader.has("reason")) {
            coding.required("code", code);
        }
        return new Reason(coding.text("system"), code, comment);
    }

    private static String uuid(FieldReader reader, String field) {
        String uuid = reader.requiredText(field);
        if (!uuid.isEmpty() && !HookRequest.UUID.matcher(uuid).matches()) {
            reader.fault(field, "must be a UUID");
        }
        return uuid;
    }

    private static Instant at(FieldReader entry) {
        String at = entry.requiredText("outcomeTimestamp");
        try {
            return at.isEmpty() ? Instant.EPOCH : OffsetDateTime.parse(at).toInstant();
        } catch (DateTimeException e) {
            entry.fault("outcomeTimestamp", "must be a date and time with its zone, such as 2026-03-20T10:11:12Z");
            return Instant.EPOCH;
        }
    }

    /** As the standard has it, with the reason nested. */
    public ObjectNode toJson() {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        ArrayNode list = root.putArray("feedback");
        entries.forEach(entry -> write(list.addObject(), entry));
        return root;
    }

    private static void write(ObjectNode node, Entry entry) {
        node.put("card", entry.card()).put("outcome", entry.outcome().word());
        if (!entry.acceptedSuggestions().isEmpty()) {
            ArrayNode accepted = node.putArray("acceptedSuggestions");
            entry.acceptedSuggestions().forEach(id -> accepted.addObject().put("id", id));
        }
        entry.reason().ifPresent(reason -> {
            ObjectNode why = node.putObject("overrideReason");
            reason.code().ifPresent(code -> {
                ObjectNode coding = why.putObject("reason").put("code", code);
                reason.system().ifPresent(system -> coding.put("system", system));
            });
            reason.comment().ifPresent(comment -> why.put("userComment", comment));
        });
        node.put("outcomeTimestamp", entry.at().toString());
    }
}
