package org.tunica.couch;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a person chose for a segment, {@code tunica-choice/1}.
 *
 * @param segment its name
 * @param technique id of the one chosen; empty when it was none of those judged here
 * @param says the technique in words
 * @param standing of it when it was chosen
 * @param first id of the one that was first
 * @param reason code of the reason why it was not the first
 * @param reasonSays the same in words
 * @param words of the person
 * @param card under which what was done with the advice is told to those who watch the rules
 */
record Choice(
        String segment,
        Optional<String> technique,
        String says,
        Optional<String> standing,
        String first,
        Optional<String> reason,
        Optional<String> reasonSays,
        Optional<String> words,
        String card) {
    /** The word it carries under {@code format}. */
    static final String FORMAT = "tunica-choice/1";

    /** @throws org.tunica.casefile.FaultyInput when it was not written here */
    static Choice read(String json) {
        Faults faults = new Faults();
        FieldReader reader =
                new FieldReader(JsonText.parse("choice", json.getBytes(StandardCharsets.UTF_8)), "$", faults);
        reader.requiredText("format");
        Choice read = new Choice(
                reader.requiredText("segment"),
                reader.text("technique"),
                reader.requiredText("says"),
                reader.text("standing"),
                reader.requiredText("first"),
                reader.text("reason"),
                reader.text("reasonSays"),
                reader.text("words"),
                reader.requiredText("card"));
        reader.done();
        faults.throwIfAny("choice");
        return read;
    }

    String json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("format", FORMAT).put("segment", segment);
        technique.ifPresent(id -> node.put("technique", id));
        node.put("says", says);
        standing.ifPresent(word -> node.put("standing", word));
        node.put("first", first);
        reason.ifPresent(code -> node.put("reason", code));
        reasonSays.ifPresent(text -> node.put("reasonSays", text));
        words.ifPresent(text -> node.put("words", text));
        return node.put("card", card).toPrettyString() + "\n";
    }

    /** Why it was this one, in words; empty for the first. */
    String why() {
        return reasonSays.orElse("") + words.map(text -> " (" + text + ")").orElse("");
    }
}
