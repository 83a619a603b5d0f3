package org.tunica.fhir;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Limb;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Puts what was found together as the tree of a case, and remembers where each value came from. */
final class CaseAssembly {
    private static final List<Measure> WISHES = List.of(Measure.AVOID_NEEDLES, Measure.AVOID_REPEAT);

    private final Map<Slots.Slot, Slots.Found> found;
    private final Notes notes;
    private final Map<String, Slots.Found> origins = new LinkedHashMap<>();
    private final List<DataAge> ages = new ArrayList<>();
    private final ObjectNode root = JsonNodeFactory.instance.objectNode();

    CaseAssembly(Map<Slots.Slot, Slots.Found> found, Notes notes) {
        this.found = found;
        this.notes = notes;
    }

    ObjectNode tree(String caseRef, JsonNode room) {
        root.put("format", CaseFile.FORMAT).put("caseRef", caseRef);
        patient(root.putObject("patient"));
        root.set("room", room);
        limbs(root.putArray("limbs"));
        return root;
    }

    /** Where a value of the case came from, by its JSON path or a path above it. */
    Optional<Slots.Found> origin(String path) {
        return Optional.ofNullable(origins.get(path));
    }

    List<DataAge> ages() {
        return ages;
    }

    private void patient(ObjectNode patient) {
        found.forEach((slot, value) -> {
            Measure measure = measure(slot);
            if (slot.about() == Measure.About.PATIENT && !WISHES.contains(measure) && !complete(measure)) {
                set(patient, "patient", slot, value);
            }
        });
        wishes(patient);
    }

    static boolean complete(Measure measure) {
        return measure == Measure.ALLERGIES_COMPLETE || measure == Measure.CONDITIONS_COMPLETE;
    }

    /** Wishes are known together or not at all: a case lists those a patient has and thereby denies the others. */
    private void wishes(ObjectNode patient) {
        List<Slots.Found> asked = new ArrayList<>();
        ArrayNode wished = JsonNodeFactory.instance.arrayNode();
        for (Measure wish : WISHES) {
            Slots.Found one = found.get(new Slots.Slot(Measure.About.PATIENT, "", wish.path()));
            if (one != null) {
                asked.add(one);
                if (one.value().booleanValue()) {
                    wished.add(wish.word());
                }
            }
        }
        if (asked.size() == WISHES.size()) {
            patient.set("preferences", wished);
        } else {
            asked.forEach(one -> notes.add(one.resource()
                    .unused(one.part(), "the other wishes were not asked, so the case leaves all unknown")));
        }
    }

    private void limbs(ArrayNode limbs) {
        Map<String, ObjectNode> bySide = new LinkedHashMap<>();
        Map<String, String> limbPaths = new LinkedHashMap<>();
        for (String ref : owners(Measure.About.SEGMENT)) {
            String side = text(ref, Measure.SIDE);
            ObjectNode limb = bySide.computeIfAbsent(side, any -> {
                limbPaths.put(side, "limbs[" + limbs.size() + "]");
                return limbs.addObject().put("side", side);
            });
            ArrayNode segments = limb.withArray("segments");
            segment(
                    ref,
                    segments.addObject().put("ref", ref),
                    limbPaths.get(side) + ".segments[" + (segments.size() - 1) + "]");
        }
        found.forEach((slot, value) -> {
            if (slot.about() == Measure.About.LIMB) {
                limb(slot, value, bySide, limbPaths);
            }
        });
    }

    private void limb(
            Slots.Slot slot, Slots.Found value, Map<String, ObjectNode> bySide, Map<String, String> limbPaths) {
        if (bySide.containsKey(slot.owner())) {
            set(bySide.get(slot.owner()), limbPaths.get(slot.owner()), slot, value);
        } else {
            notes.add(value.resource().unused(value.part(), "no segment of the " + slot.owner() + " leg is recorded"));
        }
    }

    private void segment(String ref, ObjectNode segment, String path) {
        found.forEach((slot, value) -> {
            boolean own = slot.about() == Measure.About.SEGMENT && slot.owner().equals(ref);
            if (own && measure(slot) != Measure.SIDE) {
                set(segment, path, slot, value);
            }
        });
    }

    private void set(ObjectNode holder, String path, Slots.Slot slot, Slots.Found value) {
        ObjectNode at = holder;
        String[] steps = slot.path().split("\\.");
        for (int i = 0; i < steps.length - 1; i++) {
            at = at.withObject("/" + steps[i]);
        }
        at.set(steps[steps.length - 1], value.value());
        String full = path + "." + slot.path();
        origins.put("$." + full, value);
        String owner = slot.owner().isEmpty() ? "patient" : slot.owner();
        ages.add(new DataAge(
                full,
                owner,
                measure(slot).word().replace('-', ' '),
                value.when().map(When::written).orElse(""),
                value.resource().name()));
    }

    private static Measure measure(Slots.Slot slot) {
        return Measure.at(slot.about(), slot.path()).orElseThrow();
    }

    private List<String> owners(Measure.About about) {
        return found.keySet().stream()
                .filter(slot -> slot.about() == about)
                .map(Slots.Slot::owner)
                .distinct()
                .toList();
    }

    private String text(String ref, Measure measure) {
        Slots.Found one = found.get(new Slots.Slot(Measure.About.SEGMENT, ref, measure.path()));
        return one == null ? Limb.Side.LEFT.word() : one.value().stringValue();
    }

    /** Adds a list of the history. */
    void history(String field, Set<String> words) {
        ArrayNode list = ((ObjectNode) root.get("patient")).putArray(field);
        words.forEach(list::add);
    }
}
