package org.tunica.features;

import io.cucumber.java.en.Given;
import io.cucumber.java.en.When;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tunica.CaseTree;
import org.tunica.knowledge.GlossaryField;
import org.tunica.rules.Answer;

/** What a case says, in the nouns of the glossary. */
public final class CaseSteps {
    private static final String SEGMENT = "limbs.0.segments.0.";

    /** Fields whose place in the file is not their id. */
    private static final Map<String, String> PLACES = Map.of(
            "segment.nerveGapMm", SEGMENT + "nerve.gapMm",
            "segment.posture", SEGMENT + "measured.posture",
            "segment.inSpasm", SEGMENT + "measured.inSpasm",
            "patient.canLieHeadDown", "patient.canLie.headDown",
            "patient.canLieFlat", "patient.canLie.flat",
            "patient.canLieProne", "patient.canLie.prone",
            "room.adrenaline", "room.tumescent.adrenaline");

    /** What a case holds beside the fields of rules: noun, place, whether it is a list, and the unit of a number. */
    private static final Map<String, Place> MORE = Map.of(
            "the height", new Place("patient.heightCm", Kind.NUMBER, "cm"),
            "the relaxed lumen diameter", new Place(SEGMENT + "measured.relaxedLumenDiameterMm", Kind.NUMBER, "mm"),
            "the strength of the lidocaine", new Place("room.tumescent.lidocainePercent", Kind.NUMBER, "%"),
            "the tumescent mix", new Place("room.tumescent", Kind.WORD, ""),
            "the devices of the room", new Place("room.devices", Kind.LIST, ""),
            "the nerve", new Place(SEGMENT + "nerve.name", Kind.WORD, ""),
            "the technique already chosen", new Place(SEGMENT + "chosen", Kind.WORD, ""),
            "the time the room is free", new Place("room.freeMinutes", Kind.NUMBER, "min"));

    /** The second segment of the leg, which a scenario adds to the sound one. */
    private static final String OTHER = "limbs.0.segments.1.";

    private final Clinic clinic;

    public CaseSteps(Clinic clinic) {
        this.clinic = clinic;
    }

    @Given("a sound leg")
    public void aSoundLeg() {
        clinic.sees(CaseTree.soundLeg());
    }

    @Given("the demo case {word}")
    public void theDemoCase(String name) {
        clinic.sees(CaseTree.demo(name));
    }

    @Given("^the case says ([^:]+): (.+)$")
    public void theCaseSays(String noun, String value) {
        Place place = place(noun);
        if (noun.equals("the length")) {
            // a stretch of another length is straight all along, unless the scenario says more
            clinic.tree().set(SEGMENT + "straightCm", place.parse(value));
        }
        if (place.path().equals("room.sclerosants") && !value.equals("not recorded")) {
            clinic.tree().set(place.path(), stock(value));
        } else {
            clinic.tree().set(place.path(), place.parse(value));
        }
    }

    @Given("another segment of the leg like the first")
    public void anotherSegment() {
        clinic.tree().repeatSegment("L2");
    }

    /** What is recorded of the other segment, by the name of the field in the case file. */
    @Given("^of the other segment the case says ([^:]+): (.+)$")
    public void ofTheOtherSegment(String noun, String value) {
        Place place = noun.equals("the technique chosen") ? new Place(SEGMENT + "chosen", Kind.WORD, "") : place(noun);
        clinic.tree().set(place.path().replace(SEGMENT, OTHER), place.parse(value));
    }

    /** Puts a number in the place of what the heat model computes, so that a rule can be shown exactly at its limit. */
    @Given("^the heat model foresees ([^:]+): (.+)$")
    public void theHeatModelForesees(String noun, String value) {
        GlossaryField field = Clinic.TUNICA.knowledge().glossary().fields().values().stream()
                .filter(known -> known.noun().equals(noun) && known.id().startsWith("derived."))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing computed is called \"" + noun + "\""));
        Place place = new Place(field.id(), Kind.NUMBER, field.unit().orElse(""));
        Answer answer = value.equals("not known") ? Answer.UNKNOWN : new Answer.Number((Double) place.parse(value));
        clinic.foresees(field.id(), answer);
    }

    /** Puts a word or a number in the place of what became of the ranking. */
    @Given("^the ranking says ([^:]+): (.+)$")
    public void theRankingSays(String noun, String value) {
        GlossaryField field = Clinic.TUNICA.knowledge().glossary().fields().values().stream()
                .filter(known -> known.noun().equals(noun) && known.id().startsWith("ranking."))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing about a ranking is called \"" + noun + "\""));
        Answer known = field.kind() == GlossaryField.Kind.NUMBER && !value.equals("not known")
                ? new Answer.Number(Double.parseDouble(value))
                : new Answer.OneWord(value);
        clinic.foresees(field.id(), value.equals("not known") ? Answer.UNKNOWN : known);
    }

    /** Signs are about the segment, for which any one technique stands. */
    @When("the signs of a hard case are looked for")
    public void signsAreLookedFor() {
        clinic.considers("adhesive");
    }

    @When("{word} is considered")
    public void isConsidered(String technique) {
        clinic.considers(technique);
    }

    private static Place place(String noun) {
        if (MORE.containsKey(noun)) {
            return MORE.get(noun);
        }
        for (GlossaryField field : Clinic.TUNICA.knowledge().glossary().fields().values()) {
            if (field.noun().equals(noun)) {
                return new Place(
                        path(field.id()),
                        Kind.valueOf(kind(field)),
                        field.unit().orElse(""));
            }
        }
        throw new IllegalArgumentException("nothing is called \"" + noun + "\"");
    }

    private static String kind(GlossaryField field) {
        return field.kind() == GlossaryField.Kind.SET ? "LIST" : field.kind().name();
    }

    private static String path(String field) {
        if (PLACES.containsKey(field)) {
            return PLACES.get(field);
        }
        if (field.equals("room.sclerosantDrugs")) {
            return "room.sclerosants";
        }
        String[] parts = field.split("\\.");
        return switch (parts[0]) {
            case "segment" -> SEGMENT + parts[1];
            case "limb" -> "limbs.0." + parts[1];
            case "patient", "room" -> field;
            default -> throw new IllegalArgumentException(field + " is computed and cannot be said");
        };
    }

    /** "polidocanol" stocks it at 1 and 3 per cent; "polidocanol 2" at that strength. */
    private static List<Map<String, Object>> stock(String value) {
        if (value.equals("none")) {
            return List.of();
        }
        return Arrays.stream(value.split(", "))
                .flatMap(drug ->
                        drug.contains(" ") ? List.of(drug).stream() : List.of(drug + " 1", drug + " 3").stream())
                .map(CaseSteps::entry)
                .toList();
    }

    private static Map<String, Object> entry(String drugAndPercent) {
        String[] parts = drugAndPercent.split(" ");
        Map<String, Object> entry = new HashMap<>();
        entry.put("drug", parts[0]);
        entry.put("percent", Double.valueOf(parts[1]));
        return entry;
    }

    private enum Kind {
        NUMBER,
        WORD,
        FLAG,
        LIST
    }

    private record Place(String path, Kind kind, String unit) {
        Object parse(String value) {
            if (value.equals("not recorded")) {
                return null;
            }
            return switch (kind) {
                case NUMBER -> number(value);
                case FLAG -> flag(value);
                case WORD -> value;
                case LIST -> value.equals("none") ? List.of() : List.of(value.split(", "));
            };
        }

        private Object number(String value) {
            String[] parts = value.split(" ", 2);
            String written = parts.length == 2 ? parts[1] : "1";
            String expected = unit.equals("a") ? "years" : unit;
            if (!written.equals(expected) && !written.equals(unit)) {
                throw new IllegalArgumentException(path + " is in " + unit + ", the step says " + written);
            }
            return Double.valueOf(parts[0]);
        }

        private static Object flag(String value) {
            return switch (value) {
                case "yes" -> true;
                case "no" -> false;
                default -> throw new IllegalArgumentException("expected yes or no, got " + value);
            };
        }
    }
}
