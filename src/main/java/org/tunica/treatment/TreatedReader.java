package org.tunica.treatment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Segment;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Technique;
import org.tunica.session.SessionPlan;

/**
 * Reads from a plan what is treated where. Only the steps are looked at, and what else a plan holds is passed over: a leg
 * is followed for years, longer than the rest of a plan may keep its form.
 */
final class TreatedReader {
    private final Knowledge knowledge;
    private final Faults faults = new Faults();
    private final Set<String> refs = new HashSet<>();

    TreatedReader(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    TreatedPlan read(String what, byte[] bytes) {
        FieldReader root = new FieldReader(JsonText.parse(what, bytes), "$", faults);
        faults.throwIfAny(what);
        String format = root.requiredText("format");
        if (!format.isEmpty() && !format.equals(SessionPlan.FORMAT)) {
            root.fault("format", "must be \"" + SessionPlan.FORMAT + "\"");
        }
        String caseRef = root.requiredText("caseRef");
        List<TreatedSegment> segments = new ArrayList<>();
        for (FieldReader session : objects(root, "sessions")) {
            objects(session, "steps").forEach(step -> segments.add(step(step)));
        }
        faults.throwIfAny(what);
        return new TreatedPlan(caseRef, segments, false);
    }

    private TreatedSegment step(FieldReader step) {
        String ref = step.requiredText("ref");
        if (!ref.isEmpty() && !refs.add(ref)) {
            step.fault("ref", "\"" + ref + "\" stands twice in the plan");
        }
        Technique technique = step.required("technique", step.id("technique", knowledge.techniqueIds()))
                .map(knowledge::technique)
                .orElseGet(() -> knowledge.techniques().values().iterator().next());
        return new TreatedSegment(
                ref,
                step.requiredWord("side", Limb.Side.class),
                step.requiredWord("vein", Segment.Vein.class),
                step.requiredWord("level", Segment.Level.class),
                technique.id(),
                technique.says(),
                technique.family(),
                OptionalDouble.empty());
    }

    private static List<FieldReader> objects(FieldReader reader, String field) {
        return reader.required(field, reader.objects(field)).orElse(List.of());
    }
}
