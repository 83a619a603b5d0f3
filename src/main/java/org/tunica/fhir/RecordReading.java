package org.tunica.fhir;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.knowledge.CodeFile;
import org.tunica.knowledge.Knowledge;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** One record on its way to a case. */
final class RecordReading {
    private static final Set<String> READ = Set.of("Patient", "Observation", "Condition", "AllergyIntolerance");
    private static final Set<String> SEEN = Set.of("final", "amended", "corrected");

    private final Knowledge knowledge;
    private final Site site;
    private final LocalDate day;
    private final Set<String> withheld;
    private final Notes notes = new Notes();
    private final Values values;

    RecordReading(Knowledge knowledge, Site site, LocalDate day, Set<String> withheld) {
        this.knowledge = knowledge;
        this.site = site;
        this.day = day;
        this.withheld = withheld;
        this.values = new Values(site.codes(), knowledge.value(CodeFile.MOST_AGE), notes);
    }

    Translated read(String what, JsonNode record, String caseRef) {
        Assembled assembled = assembled(record, caseRef);
        CaseFile read = caseFile(assembled.tree(), assembled.assembly());
        notes.throwIfFaulty(what);
        return new Translated(read, notes.unused(), assembled.assembly().ages());
    }

    /** As much of a case as the record gives, which nobody has judged yet; a record that contradicts itself gives none. */
    TakenOver takeOver(String what, JsonNode record, String caseRef) {
        Assembled assembled = assembled(record, caseRef);
        notes.throwIfFaulty(what);
        return new TakenOver(
                assembled.tree(), notes.unused(), assembled.assembly().ages());
    }

    /** The tree of a case, and where each of its values came from. */
    private record Assembled(JsonNode tree, CaseAssembly assembly) {}

    private Assembled assembled(JsonNode record, String caseRef) {
        Gathered gathered = Gathered.of(record, notes);
        Person person = new Person(gathered, notes);
        Slots slots = new Observations(gathered, site.codes(), values, day, notes).read(counting(gathered, person));
        born(person, slots);
        Map<Slots.Slot, Slots.Found> found = slots.newest(notes);
        CaseAssembly assembly = new CaseAssembly(found, notes);
        JsonNode tree = assembly.tree(caseRef, site.roomTree());
        history(
                Codes.ALLERGY,
                "allergies",
                owned(gathered.of("AllergyIntolerance"), person, "patient"),
                assembly,
                found);
        history(Codes.CONDITION, "conditions", owned(gathered.of("Condition"), person, "subject"), assembly, found);
        gathered.all().forEach(this::noteIfOfNoUse);
        return new Assembled(tree, assembly);
    }

    private void history(
            String kind,
            String list,
            List<Resource> entries,
            CaseAssembly assembly,
            Map<Slots.Slot, Slots.Found> found) {
        if (!withheld.contains(list)) {
            Slots.Found complete = found.get(new Slots.Slot(Measure.About.PATIENT, "", list));
            new History(kind, list, site, values, notes)
                    .read(entries, complete != null && complete.value().booleanValue())
                    .ifPresent(words -> assembly.history(list, words));
        }
    }

    /** The Observations that say what was seen in this patient. */
    private List<Resource> counting(Gathered gathered, Person person) {
        return owned(gathered.of("Observation"), person, "subject").stream()
                .filter(one -> {
                    String status = one.part().text("status");
                    if (!SEEN.contains(status)) {
                        notes.add(one.unused(
                                status.isEmpty() ? "has no status" : "has the status " + Part.shorten(status)));
                    }
                    return SEEN.contains(status);
                })
                .toList();
    }

    private static List<Resource> owned(List<Resource> resources, Person person, String field) {
        return resources.stream().filter(one -> person.owns(one, field)).toList();
    }

    /** A birth date counts like any other way to tell an age, and tells it for today. */
    private void born(Person person, Slots slots) {
        person.resource().ifPresent(patient -> {
            OptionalInt age = person.ageYears(day);
            Part born = patient.part().at("birthDate");
            if (age.isPresent()) {
                JsonNode years = JsonNodeFactory.instance.numberNode(values.age(age.getAsInt()));
                slots.put(
                        Measure.About.PATIENT,
                        "",
                        Measure.AGE,
                        new Slots.Found(years, When.of(day.toString()), patient, born));
            }
            person.sex()
                    .ifPresent(sex -> slots.put(
                            Measure.About.PATIENT,
                            "",
                            Measure.SEX,
                            new Slots.Found(
                                    JsonNodeFactory.instance.stringNode(sex),
                                    Optional.empty(),
                                    patient,
                                    patient.part().at("gender"))));
        });
    }

    private void noteIfOfNoUse(Resource resource) {
        if (resource.type().equals("OperationOutcome")) {
            notes.add(resource.unused("the record system answered with a problem: " + problem(resource.part())));
        } else if (!READ.contains(resource.type())) {
            notes.add(resource.unused("resources of this type are not read"));
        }
    }

    static String problem(Part outcome) {
        return outcome.list("issue").stream()
                .map(issue -> issue.text("diagnostics").isEmpty()
                        ? issue.at("details").text("text")
                        : issue.text("diagnostics"))
                .filter(text -> !text.isEmpty())
                .map(Part::shorten)
                .findFirst()
                .orElse("it says nothing more");
    }

    /** The one reader of cases judges the tree; its faults tell where in the record the value stands. */
    private CaseFile caseFile(JsonNode tree, CaseAssembly assembly) {
        Faults faults = new Faults();
        CaseFile read = CaseFile.read(new FieldReader(tree, "$", faults), faults, knowledge);
        for (Fault fault : faults.list()) {
            String from = assembly.origin(fault.place())
                    .map(one -> ", from " + one.resource().name() + " at "
                            + one.part().path())
                    .orElse("");
            notes.faults().add(fault.place(), fault.says() + from);
        }
        return read;
    }
}
