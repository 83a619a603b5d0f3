package org.tunica.knowledge;

import java.util.List;
import org.tunica.casefile.FieldReader;

/** Reads the entries that tell what became of evidence, of disagreements and of what the review remarked. */
final class LedgerReader {
    private LedgerReader() {}

    static Evidence evidence(String id, FieldReader reader) {
        Evidence evidence = new Evidence(
                id,
                reader.requiredText("says"),
                reader.texts("sources"),
                reader.requiredWord("tag", Evidence.Tag.class),
                reader.texts("rules"),
                reader.texts("limits"),
                reader.text("left"));
        boolean carried = !evidence.rules().isEmpty() || !evidence.limits().isEmpty();
        oneOf(reader, carried, evidence.left().isPresent(), "rules or limits");
        reader.done();
        return evidence;
    }

    static Conflict conflict(String id, FieldReader reader) {
        Conflict conflict = new Conflict(
                id,
                reader.requiredText("question"),
                reader.texts("values"),
                steps(reader),
                reader.requiredText("why"),
                reader.text("left"));
        oneOf(reader, !conflict.steps().isEmpty(), conflict.left().isPresent(), "steps");
        reader.done();
        return conflict;
    }

    static AcceptedRemark accepted(String id, FieldReader reader) {
        AcceptedRemark accepted = new AcceptedRemark(
                id, reader.requiredText("remark"), reader.texts("rules"), reader.requiredText("why"));
        if (reader.readable() && accepted.rules().isEmpty()) {
            reader.fault("rules", "at least one rule must be named");
        }
        reader.done();
        return accepted;
    }

    private static List<Conflict.Step> steps(FieldReader reader) {
        return reader.objects("steps").orElse(List.of()).stream()
                .map(LedgerReader::step)
                .toList();
    }

    private static Conflict.Step step(FieldReader reader) {
        Conflict.Step step = new Conflict.Step(
                reader.requiredWord("does", Conflict.Does.class), reader.text("at"), reader.texts("rules"));
        if (reader.readable() && step.rules().isEmpty()) {
            reader.fault("rules", "at least one rule must be named");
        }
        reader.done();
        return step;
    }

    private static void oneOf(FieldReader reader, boolean carried, boolean left, String what) {
        if (reader.readable() && carried == left) {
            reader.fault("left", "give either " + what + " or the reason why there are none, not both and not neither");
        }
    }
}
