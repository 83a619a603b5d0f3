package org.tunica.fhir;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The values found for each place of a case, and of several the newest. */
final class Slots {
    private final Map<Slot, List<Found>> found = new LinkedHashMap<>();

    /**
     * A place of a case.
     *
     * @param owner empty for the patient, the side of a leg, or the name of a segment
     */
    record Slot(Measure.About about, String owner, String path) {}

    /** A value found, converted, and when it was recorded. */
    record Found(JsonNode value, Optional<When> when, Resource resource, Part part) {
        private String told() {
            return Part.shorten(value.asString("")) + " of "
                    + when.map(When::written).orElse("no date") + " (" + resource.name() + ")";
        }

        private boolean beats(Found other) {
            return value.equals(other.value)
                    || (when.isPresent() && other.when.isPresent() && when.get().after(other.when.get()));
        }

        private boolean newerThan(Found other) {
            return when.isPresent() && (other.when.isEmpty() || when.get().after(other.when.get()));
        }
    }

    void put(Measure.About about, String owner, Measure measure, Found one) {
        found.computeIfAbsent(new Slot(about, owner, measure.path()), any -> new ArrayList<>())
                .add(one);
    }

    /** The newest value of every place; values between which nobody can tell are a fault. */
    Map<Slot, Found> newest(Notes notes) {
        Map<Slot, Found> newest = new LinkedHashMap<>();
        found.forEach((slot, all) -> newest(slot, all, notes).ifPresent(one -> newest.put(slot, one)));
        return newest;
    }

    private static Optional<Found> newest(Slot slot, List<Found> all, Notes notes) {
        Optional<Found> best =
                all.stream().filter(one -> all.stream().allMatch(one::beats)).reduce((a, b) -> b.newerThan(a) ? b : a);
        if (best.isEmpty()) {
            notes.faults()
                    .add(
                            all.get(0).part().path(),
                            place(slot) + " has values of which none is known to be the newest: "
                                    + String.join(
                                            ", ",
                                            all.stream()
                                                    .limit(5)
                                                    .map(Found::told)
                                                    .toList()));
            return best;
        }
        all.stream()
                .filter(one -> !one.value().equals(best.get().value()))
                .forEach(one -> notes.add(
                        one.resource().unused(one.part(), "an older value of " + place(slot) + ", " + one.told())));
        return best;
    }

    private static String place(Slot slot) {
        String owner = slot.owner().isEmpty() ? "the patient" : slot.owner();
        return slot.path() + " of " + owner;
    }
}
