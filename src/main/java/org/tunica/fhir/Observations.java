package org.tunica.fhir;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.CaseFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Sorts the Observations of a record into the places of a case. */
final class Observations {
    private static final Pattern REFERENCE = Pattern.compile(CaseFile.REFERENCE);
    private static final List<Measure> PLACE = List.of(Measure.SIDE, Measure.VEIN, Measure.LEVEL);

    private final Gathered gathered;
    private final Codes codes;
    private final Values values;
    private final LocalDate day;
    private final Notes notes;
    private final Slots slots = new Slots();
    /** By identity: two resources that say the same are still two, and comparing whole trees is dear. */
    private final Set<Resource> members = Collections.newSetFromMap(new IdentityHashMap<>());

    private final Set<Resource> counting = Collections.newSetFromMap(new IdentityHashMap<>());

    Observations(Gathered gathered, Codes codes, Values values, LocalDate day, Notes notes) {
        this.gathered = gathered;
        this.codes = codes;
        this.values = values;
        this.day = day;
        this.notes = notes;
    }

    /** Reads those that count; segments first, for they name the Observations that belong to them. */
    Slots read(List<Resource> thatCount) {
        counting.addAll(thatCount);
        List<Told> told = new ArrayList<>();
        thatCount.forEach(one -> measure(one.part(), one).ifPresent(measure -> told.add(new Told(one, measure))));
        told.stream().filter(one -> one.measure() == Measure.SEGMENT).forEach(one -> segment(one.resource()));
        told.stream().filter(one -> one.measure() != Measure.SEGMENT).forEach(this::alone);
        return slots;
    }

    private record Told(Resource resource, Measure measure) {}

    private Optional<Measure> measure(Part carrier, Resource resource) {
        return values.word(Codes.MEASURE, carrier, "code", resource).map(Measure::of);
    }

    private void segment(Resource group) {
        Map<Part, Measure> parts = new LinkedHashMap<>();
        group.part().list("component").forEach(one -> measure(one, group).ifPresent(what -> parts.put(one, what)));
        Map<Measure, String> place = place(group, parts);
        List<Measure> missing =
                PLACE.stream().filter(what -> !place.containsKey(what)).toList();
        if (!missing.isEmpty()) {
            notes.add(group.unused("the segment is left out: it does not tell "
                    + String.join(", ", missing.stream().map(Measure::word).toList())));
            members(group);
            return;
        }
        String ref = ref(group, place);
        place.forEach((what, word) ->
                put(what, ref, group.part(), group, Optional.of(JsonNodeFactory.instance.stringNode(word))));
        parts.forEach((carrier, what) -> ofSegment(ref, what, carrier, group));
        members(group)
                .forEach(member ->
                        measure(member.part(), member).ifPresent(what -> ofSegment(ref, what, member.part(), member)));
    }

    /** Where a segment lies, by its body site and by components. */
    private Map<Measure, String> place(Resource group, Map<Part, Measure> parts) {
        Map<Measure, String> place = new LinkedHashMap<>();
        for (Measure what : PLACE) {
            Set<String> words = new HashSet<>();
            group.part()
                    .codings("bodySite")
                    .forEach(code -> codes.word(what.word(), code).ifPresent(words::add));
            parts.forEach((carrier, about) -> {
                if (about == what) {
                    values.value(what, carrier, group).ifPresent(value -> words.add(value.stringValue()));
                }
            });
            if (words.size() == 1) {
                place.put(what, words.iterator().next());
            } else if (words.size() > 1) {
                notes.add(group.unused("tells more than one " + what.word()));
            }
        }
        return place;
    }

    /** The name of a segment: its identifier, else where it lies, by which a later scan of the same segment is known. */
    private static String ref(Resource group, Map<Measure, String> place) {
        return group.part().list("identifier").stream()
                .filter(one -> one.text("system").equals(Codes.OWN + "segment"))
                .map(one -> one.text("value"))
                .filter(value -> REFERENCE.matcher(value).matches())
                .findFirst()
                .orElseGet(() -> String.join("-", PLACE.stream().map(place::get).toList()));
    }

    private List<Resource> members(Resource group) {
        List<Resource> found = new ArrayList<>();
        for (Part member : group.part().list("hasMember")) {
            Optional<Resource> meant = gathered.meantBy(member.text("reference"));
            if (meant.isEmpty()) {
                notes.add(group.unused(member, "the Observation it names is not in the record"));
            } else if (counting.contains(meant.get()) && members.add(meant.get())) {
                found.add(meant.get());
            }
        }
        return found;
    }

    private void ofSegment(String ref, Measure what, Part carrier, Resource resource) {
        if (PLACE.contains(what)) {
            return;
        }
        if (what.about() != Measure.About.SEGMENT || what == Measure.SEGMENT) {
            notes.add(resource.unused(carrier, what.word() + " does not belong to a segment"));
        } else {
            put(what, ref, carrier, resource, values.value(what, carrier, resource));
        }
    }

    private void alone(Told told) {
        Resource resource = told.resource();
        Measure what = told.measure();
        if (members.contains(resource)) {
            return;
        }
        switch (what.about()) {
            case PATIENT -> put(what, "", resource.part(), resource, values.value(what, resource.part(), resource));
            case LIMB -> ofLimb(what, resource);
            case SEGMENT -> notes.add(resource.unused("belongs to no segment: no segment names it as its member"));
        }
    }

    private void ofLimb(Measure what, Resource resource) {
        Map<Part, Measure> parts = new LinkedHashMap<>();
        resource.part()
                .list("component")
                .forEach(one -> measure(one, resource).ifPresent(part -> parts.put(one, part)));
        parts.forEach((carrier, part) -> {
            if (part != Measure.SIDE) {
                notes.add(resource.unused(carrier, "only the side is read from a component here"));
            }
        });
        String side = place(resource, parts).get(Measure.SIDE);
        if (side == null) {
            notes.add(resource.unused("does not tell of which leg it is"));
        } else {
            put(what, side, resource.part(), resource, values.value(what, resource.part(), resource));
        }
    }

    private void put(Measure what, String owner, Part carrier, Resource resource, Optional<? extends JsonNode> value) {
        value.ifPresent(one -> {
            Optional<When> when = when(resource);
            if (when.isPresent() && when.get().from().isAfter(day.plusDays(1))) {
                notes.add(resource.unused(carrier, "is dated after the day of this reading"));
            } else {
                slots.put(what.about(), owner, what, new Slots.Found(one, when, resource, carrier));
            }
        });
    }

    private static Optional<When> when(Resource resource) {
        Part part = resource.part();
        return List.of(
                        part.text("effectiveDateTime"),
                        part.text("effectiveInstant"),
                        part.at("effectivePeriod").text("end"),
                        part.at("effectivePeriod").text("start"),
                        part.text("issued"))
                .stream()
                .filter(text -> !text.isEmpty())
                .findFirst()
                .flatMap(When::of);
    }
}
