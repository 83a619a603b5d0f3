package org.tunica.knowledge;

import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;

/** Writes a proposed change in the very form the readers of this package take. */
final class ProposalText {
    private static final String HEAD = """
            # A proposal for governance, not for use: drafted by a fit, seen and signed by nobody.
            # First document: entries that would replace those of the same id in knowledge/.
            # Second document: the change record that would stand in rules/changes/. Give it the next free number there
            # and in every entry, name its authors, and put a source of your own in place of the one named here.
            """;

    private static final YAMLMapper YAML = YAMLMapper.builder()
            .enable(YAMLWriteFeature.MINIMIZE_QUOTES, YAMLWriteFeature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
            .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER, YAMLWriteFeature.SPLIT_LINES)
            .build();

    private ProposalText() {}

    static String of(ProposedChange proposed) {
        ObjectNode entries = JsonNodeFactory.instance.objectNode();
        proposed.quantities().forEach(quantity -> entries.set(quantity.id(), entry(quantity)));
        return HEAD + YAML.writeValueAsString(entries) + "---\n" + YAML.writeValueAsString(record(proposed.record()));
    }

    static String of(ChangeRecord change) {
        return YAML.writeValueAsString(record(change));
    }

    private static ObjectNode entry(Quantity quantity) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        entry.put("says", quantity.says());
        entry.put("value", quantity.value());
        quantity.low().ifPresent(low -> entry.put("low", low));
        quantity.high().ifPresent(high -> entry.put("high", high));
        entry.put("unit", quantity.unit());
        Provenance provenance = quantity.provenance();
        entry.put("source", provenance.source());
        entry.put("status", provenance.standing().word());
        entry.put("since", provenance.since().toString());
        entry.put("change", provenance.change());
        provenance.note().ifPresent(note -> entry.put("note", note));
        return entry;
    }

    private static ObjectNode record(ChangeRecord change) {
        ObjectNode record = JsonNodeFactory.instance.objectNode();
        record.put("number", change.number());
        record.put("title", change.title());
        record.put("status", change.status().word());
        record.set("authors", people(change.authors()));
        record.set("reviewers", people(change.reviewers()));
        record.set("approvers", people(change.approvers()));
        record.put("reason", change.reason());
        record.set("sources", texts(change.sources()));
        record.set("rules", texts(change.rules()));
        record.set("limits", texts(change.limits()));
        record.put("effective", change.effective().toString());
        record.set("replaces", texts(change.replaces()));
        if (!change.retires().isEmpty()) {
            record.set("retires", texts(change.retires()));
        }
        return record;
    }

    private static ArrayNode people(List<ChangeRecord.Person> people) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        people.forEach(person -> array.addObject().put("role", person.role()).put("initials", person.initials()));
        return array;
    }

    private static ArrayNode texts(List<String> texts) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        texts.forEach(array::add);
        return array;
    }
}
