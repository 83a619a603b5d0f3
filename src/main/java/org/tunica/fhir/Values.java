package org.tunica.fhir;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.Faults;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Turns the value of an Observation or a component into what a case holds, or notes why it cannot. */
final class Values {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Codes codes;
    private final double mostAgeYears;
    private final Notes notes;

    Values(Codes codes, double mostAgeYears, Notes notes) {
        this.codes = codes;
        this.mostAgeYears = mostAgeYears;
        this.notes = notes;
    }

    /** The one word of a kind that a CodeableConcept means; what it means otherwise is noted. */
    Optional<String> word(String kind, Part holder, String field, Resource resource) {
        List<Codes.Coding> codings = holder.codings(field);
        List<String> words = codings.stream()
                .flatMap(coding -> codes.word(kind, coding).stream())
                .distinct()
                .toList();
        if (words.size() == 1) {
            return Optional.of(words.get(0));
        }
        String reason = words.size() > 1
                ? "its codes contradict each other: " + String.join(", ", words)
                : codings.isEmpty()
                        ? "holds no code that names its system"
                        : codings.stream().map(codes::unknown).findFirst().orElse("");
        notes.add(resource.unused(holder.at(field), reason));
        return Optional.empty();
    }

    /** The value a carrier has for a measure. */
    Optional<JsonNode> value(Measure measure, Part carrier, Resource resource) {
        if (carrier.at("dataAbsentReason").present()) {
            return unused(resource, carrier, "is recorded as not known");
        }
        String field = carrier.choice("value").orElse("");
        if (field.isEmpty()) {
            return unused(resource, carrier, "has no value");
        }
        if (measure == Measure.CEAP_CLASS && field.equals("valueString")) {
            return ceap(carrier, resource);
        }
        if (!field.equals(expected(measure))) {
            return unused(resource, carrier.at(field), "must be a " + expected(measure) + " to be read");
        }
        return switch (measure.kind()) {
            case QUANTITY -> quantity(measure, carrier.at(field), resource);
            case FLAG -> flag(carrier.at(field), resource);
            case WORD -> word(measure.wordKind(), carrier, field, resource).map(NODES::stringNode);
            case GROUP -> Optional.empty();
        };
    }

    private static String expected(Measure measure) {
        return switch (measure.kind()) {
            case QUANTITY -> "valueQuantity";
            case FLAG -> "valueBoolean";
            case WORD, GROUP -> "valueCodeableConcept";
        };
    }

    private Optional<JsonNode> quantity(Measure measure, Part quantity, Resource resource) {
        JsonNode value = quantity.node().path("value");
        String code = Part.shorten(quantity.text("code"));
        if (!value.isNumber()) {
            return unused(resource, quantity, "has no number as its value");
        }
        if (quantity.at("comparator").present()) {
            return unused(resource, quantity, "is no measured value but a bound (it has a comparator)");
        }
        if (!quantity.text("system").equals(Ucum.SYSTEM) || code.isEmpty()) {
            return unused(resource, quantity, "does not give its unit as a code of " + Ucum.SYSTEM);
        }
        Optional<String> refusal = Ucum.refusal(code, measure.unit());
        if (refusal.isPresent()) {
            return unused(resource, quantity, refusal.get());
        }
        return Optional.of(converted(measure, exact(value), code));
    }

    private static BigDecimal exact(JsonNode value) {
        return value.isFloatingPointNumber() ? BigDecimal.valueOf(value.doubleValue()) : value.decimalValue();
    }

    private JsonNode converted(Measure measure, BigDecimal value, String code) {
        OptionalDouble converted = Ucum.convert(value, code, measure.unit());
        double number = converted.orElseThrow(() -> new IllegalStateException(code + " was refused before"));
        return NODES.numberNode(measure == Measure.AGE ? age(number) : number);
    }

    /** An age in whole years, cut where ages are no longer told apart. */
    double age(double years) {
        return Math.min(Math.floor(years), mostAgeYears);
    }

    private Optional<JsonNode> flag(Part value, Resource resource) {
        return value.node().isBoolean() ? Optional.of(value.node()) : unused(resource, value, "must be true or false");
    }

    /** A leg in the notation of CEAP, of which a case takes the highest clinical class. */
    private Optional<JsonNode> ceap(Part carrier, Resource resource) {
        Faults faults = new Faults();
        Optional<Ceap> read = Ceap.read("", carrier.text("valueString"), faults);
        return read.isPresent()
                ? Optional.of(NODES.stringNode(read.get().highest().word()))
                : unused(
                        resource,
                        carrier.at("valueString"),
                        faults.list().stream()
                                .map(fault -> fault.says())
                                .findFirst()
                                .orElse("is no CEAP notation"));
    }

    private Optional<JsonNode> unused(Resource resource, Part where, String reason) {
        notes.add(resource.unused(where, reason));
        return Optional.empty();
    }
}
