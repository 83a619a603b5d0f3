package org.tunica;

import com.fasterxml.classmate.ResolvedType;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tunica.casefile.CaseFile;
import org.tunica.casefile.Ceap;
import org.tunica.casefile.KnownWords;
import org.tunica.casefile.Limb;
import org.tunica.casefile.Patient;
import org.tunica.casefile.PlausibleRange;
import org.tunica.casefile.Room;
import org.tunica.casefile.Segment;
import org.tunica.casefile.Word;
import org.tunica.outcomes.Audit;
import org.tunica.pastcases.Band;
import org.tunica.pastcases.PastCase;
import org.tunica.plan.Advice;
import org.tunica.replay.ReplayResult;
import org.tunica.session.SessionPlan;
import org.tunica.similar.SimilarCases;
import org.tunica.treatment.DeliveredHeat;
import org.tunica.treatment.DeliveredSegment;
import org.tunica.treatment.DeliveredSession;
import org.tunica.treatment.FollowUp;
import org.tunica.treatment.SeverityGrades;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** JSON Schemas (2020-12) of the contracts, generated from the records and the words in use. */
final class JsonSchemas {
    /** Parts that may be left out: everything in them is then unknown. */
    private static final Set<Class<?>> PARTS = Set.of(
            Patient.class,
            Patient.CanLie.class,
            Room.class,
            Segment.Measured.class,
            Segment.Nerve.class,
            DeliveredSession.Totals.class,
            DeliveredSession.Aftercare.class,
            DeliveredSegment.Access.class,
            DeliveredSegment.ClosingDuplex.class);

    /** What a past case must not hold. */
    private static final Map<Class<?>, Set<String>> COULD_NAME = Map.of(
            Patient.class, Set.of("ageYears", "weightKg", "heightCm"),
            Room.class, Set.of("costClasses"),
            DeliveredSession.class, Set.of("date", "people", "indication"),
            DeliveredSession.Aftercare.class, Set.of("compression", "prophylaxis", "followUp"),
            DeliveredSegment.class, Set.of("incidentNote", "notDone"));

    /** The word under {@code format} of what stands inside something else. */
    private static final Map<Class<?>, String> FORMATS = Map.of(
            CaseFile.class, CaseFile.FORMAT,
            DeliveredSession.class, DeliveredSession.FORMAT,
            FollowUp.class, FollowUp.FORMAT);

    /** Where the numbers of a record stand in a case, for their plausible range. */
    private static final Map<Class<?>, String> PLACES = Map.ofEntries(
            Map.entry(Patient.class, "patient."),
            Map.entry(Room.class, "room."),
            Map.entry(Room.Sclerosant.class, "room.sclerosants."),
            Map.entry(Room.Tumescent.class, "room.tumescent."),
            Map.entry(Limb.class, "limbs."),
            Map.entry(Segment.class, "limbs.segments."),
            Map.entry(Segment.Measured.class, "limbs.segments.measured."),
            Map.entry(Segment.Nerve.class, "limbs.segments.nerve."),
            Map.entry(DeliveredSession.class, "delivered."),
            Map.entry(DeliveredSession.Totals.class, "delivered.totals."),
            Map.entry(DeliveredSegment.class, "delivered.segments."),
            Map.entry(DeliveredHeat.class, "delivered.segments.heat."),
            Map.entry(DeliveredSegment.Tumescent.class, "delivered.segments.tumescent."),
            Map.entry(DeliveredSegment.Sclerosant.class, "delivered.segments.sclerosant."),
            Map.entry(DeliveredSegment.Adhesive.class, "delivered.segments.adhesive."),
            Map.entry(DeliveredSegment.ClosingDuplex.class, "delivered.segments.closingDuplex."),
            Map.entry(FollowUp.TreatedLength.class, "followup.limbs.treated."),
            Map.entry(FollowUp.Visit.class, "followup.limbs.visits."),
            Map.entry(FollowUp.Seen.class, "followup.limbs.visits.segments."));

    private static final Optional<PlausibleRange> FOUR_DIGITS = Optional.of(new PlausibleRange(1000, 9999, "a"));

    private final KnownWords known;

    JsonSchemas(KnownWords known) {
        this.known = known;
    }

    /** The schema of a contract. */
    String of(Contract contract) {
        return switch (contract) {
            case CASE -> ofCase();
            case ADVICE -> ofAdvice();
            case PLAN -> ofPlan();
            case DELIVERED -> ofDelivered();
            case FOLLOWUP -> ofFollowUp();
            case PAST -> ofPastCase();
            case SIMILAR -> ofSimilar();
            case AUDIT -> ofAudit();
            case REPLAY -> ofReplay();
        };
    }

    private String ofCase() {
        return JsonOutput.of(named(entered(), CaseFile.class, CaseFile.FORMAT, "Tunica case"));
    }

    private String ofDelivered() {
        return JsonOutput.of(
                named(entered(), DeliveredSession.class, DeliveredSession.FORMAT, "Tunica delivered session"));
    }

    private String ofPlan() {
        return JsonOutput.of(named(entered(), SessionPlan.class, SessionPlan.FORMAT, "Tunica plan"));
    }

    /** What people enter: parts may be left out, null is unknown, numbers keep their plausible range. */
    private SchemaGeneratorConfigBuilder entered() {
        SchemaGeneratorConfigBuilder config = config();
        config.forFields()
                .withRequiredCheck(field -> !mayBeLeftOut(field))
                .withNullableCheck(JsonSchemas::mayBeLeftOut)
                .withNumberInclusiveMinimumResolver(field -> bound(field, PlausibleRange::min))
                .withNumberInclusiveMaximumResolver(field -> bound(field, PlausibleRange::max))
                .withEnumResolver(this::ids)
                .withStringPatternResolver(JsonSchemas::pattern)
                .withArrayMinItemsResolver(JsonSchemas::atLeastOne)
                .withArrayMaxItemsResolver(JsonSchemas::mostItems)
                .withArrayUniqueItemsResolver(field -> Set.class.isAssignableFrom(element(field))
                                || field.getDeclaredName().equals("importance")
                        ? true
                        : null);
        return config;
    }

    private String ofFollowUp() {
        return JsonOutput.of(named(entered(), FollowUp.class, FollowUp.FORMAT, "Tunica follow-up"));
    }

    /** The schema of a past case, in which what could name someone has no place. */
    private String ofPastCase() {
        SchemaGeneratorConfigBuilder config = entered();
        config.forFields().withIgnoreCheck(JsonSchemas::couldName);
        return JsonOutput.of(named(config, PastCase.class, PastCase.FORMAT, "Tunica past case"));
    }

    private static boolean couldName(FieldScope field) {
        return COULD_NAME
                .getOrDefault(field.getDeclaringType().getErasedType(), Set.of())
                .contains(field.getDeclaredName());
    }

    private String ofAdvice() {
        return JsonOutput.of(named(written(), Advice.class, Advice.FORMAT, "Tunica advice"));
    }

    private String ofSimilar() {
        return JsonOutput.of(named(written(), SimilarCases.class, SimilarCases.FORMAT, "Tunica similar past cases"));
    }

    private String ofAudit() {
        return JsonOutput.of(named(written(), Audit.class, Audit.FORMAT, "Tunica audit"));
    }

    private String ofReplay() {
        return JsonOutput.of(named(written(), ReplayResult.class, ReplayResult.FORMAT, "Tunica replay"));
    }

    /** What the program writes: what is known is there, what is not is left out. */
    private static SchemaGeneratorConfigBuilder written() {
        SchemaGeneratorConfigBuilder config = config();
        config.forFields().withRequiredCheck(JsonSchemas::required);
        return config;
    }

    private static SchemaGeneratorConfigBuilder config() {
        SchemaGeneratorConfigBuilder config = new SchemaGeneratorConfigBuilder(
                        SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
                .with(Option.FORBIDDEN_ADDITIONAL_PROPERTIES_BY_DEFAULT)
                .with(Option.FLATTENED_OPTIONALS)
                .with(Option.NULLABLE_ALWAYS_AS_ANYOF)
                .without(Option.NONSTATIC_NONVOID_NONGETTER_METHODS, Option.FIELDS_DERIVED_FROM_ARGUMENTFREE_METHODS);
        config.forTypesInGeneral()
                .withCustomDefinitionProvider(JsonSchemas::ownTypes)
                .withSubtypeResolver(JsonSchemas::oneOfThese);
        return config;
    }

    /** The records a sealed interface stands for. */
    private static @Nullable List<ResolvedType> oneOfThese(ResolvedType type, SchemaGenerationContext context) {
        Class<?> erased = type.getErasedType();
        if (!erased.isInterface() || !erased.isSealed()) {
            return null;
        }
        return Arrays.stream(erased.getPermittedSubclasses())
                .map(one -> context.getTypeContext().resolveSubtype(type, one))
                .toList();
    }

    private static @Nullable CustomDefinition ownTypes(ResolvedType type, SchemaGenerationContext context) {
        Class<?> erased = type.getErasedType();
        ObjectNode node = context.getGeneratorConfig().createObjectNode();
        if (erased == OptionalDouble.class) {
            return inline(node.put("type", "number"));
        }
        if (erased == OptionalInt.class) {
            return inline(node.put("type", "integer"));
        }
        if (erased == Band.class) {
            return inline(node.put("type", "string").put("pattern", Band.PATTERN));
        }
        if (erased == Ceap.class) {
            return inline(node.put("type", "string").put("pattern", "\\S"));
        }
        if (erased.isEnum() && Word.class.isAssignableFrom(erased)) {
            ArrayNode words = node.put("type", "string").putArray("enum");
            for (Object constant : erased.getEnumConstants()) {
                words.add(((Word) constant).word());
            }
            return inline(node);
        }
        return null;
    }

    private static CustomDefinition inline(ObjectNode node) {
        return new CustomDefinition(node, true);
    }

    private static ObjectNode named(SchemaGeneratorConfigBuilder config, Class<?> record, String format, String title) {
        ObjectNode schema = new SchemaGenerator(config.build()).generateSchema(record);
        schema.put("$id", "urn:" + format.replace('/', ':')).put("title", title);
        ((ObjectNode) schema.get("properties")).putObject("format").put("const", format);
        ArrayNode required = (ArrayNode) schema.get("required");
        if (required.valueStream().noneMatch(name -> name.stringValue().equals("format"))) {
            required.add("format");
        }
        return schema;
    }

    private static boolean mayBeLeftOut(FieldScope field) {
        boolean ofAPastCase = field.getDeclaringType().getErasedType() == PastCase.class;
        return !required(field)
                || PARTS.contains(field.getType().getErasedType())
                || ofAPastCase && field.getDeclaredName().equals("notes") && !field.isFakeContainerItemScope();
    }

    private static boolean required(FieldScope field) {
        Class<?> erased = field.getDeclaredType().getErasedType();
        return erased != Optional.class && erased != OptionalDouble.class && erased != OptionalInt.class;
    }

    private @Nullable BigDecimal bound(FieldScope field, ToDoubleFunction<PlausibleRange> end) {
        String place = place(field);
        if (field.getDeclaringType().getErasedType() == PastCase.class) {
            return FOUR_DIGITS
                    .map(range -> BigDecimal.valueOf(end.applyAsDouble(range)))
                    .filter(number -> field.getDeclaredName().equals("year"))
                    .orElse(null);
        }
        return place == null
                ? null
                : known.plausibleRange(place)
                        .map(range -> BigDecimal.valueOf(end.applyAsDouble(range)))
                        .orElse(null);
    }

    /** Where a number has its range; the ten grades of a severity score share one. */
    private static @Nullable String place(FieldScope field) {
        Class<?> owner = field.getDeclaringType().getErasedType();
        if (owner == SeverityGrades.class) {
            return "followup.vcss";
        }
        String place = PLACES.get(owner);
        return place == null ? null : place + field.getDeclaredName();
    }

    private @Nullable Collection<?> ids(FieldScope field) {
        if (field.getType().getErasedType() != String.class) {
            return null;
        }
        if (field.getDeclaredName().equals("format")) {
            String format = FORMATS.get(field.getDeclaringType().getErasedType());
            return format == null ? null : List.of(format);
        }
        if (List.of("chosen", "technique").contains(field.getDeclaredName())) {
            return techniques(field);
        }
        if (!field.isFakeContainerItemScope()) {
            return null;
        }
        return switch (field.getDeclaredName()) {
            case "devices", "low", "middling", "high" -> new ArrayList<>(known.techniqueIds());
            case "allergies" -> new ArrayList<>(known.allergyIds());
            case "conditions" -> new ArrayList<>(known.conditionIds());
            default -> null;
        };
    }

    /** Where a technique may be left out, null is one of the values. */
    private Collection<?> techniques(FieldScope field) {
        List<@Nullable String> ids = new ArrayList<>(known.techniqueIds());
        if (!required(field)) {
            ids.add(null);
        }
        return ids;
    }

    /** The pattern of a text that people enter; a text of their own must hold something. */
    private static @Nullable String pattern(FieldScope field) {
        Class<?> owner = field.getDeclaringType().getErasedType();
        boolean entered = owner == CaseFile.class
                || owner == FollowUp.class
                || owner == PastCase.class
                || owner == DeliveredSession.Person.class
                || PLACES.containsKey(owner)
                || PARTS.contains(owner);
        if (field.getType().getErasedType() != String.class || !entered) {
            return null;
        }
        return switch (field.getDeclaredName()) {
            case "caseRef", "ref" -> "^" + CaseFile.REFERENCE + "$";
            case "id" -> "^" + PastCase.ID + "$";
            case "site" -> "^" + PastCase.SITE + "$";
            case "initials" -> "^" + DeliveredSession.INITIALS + "$";
            case "date" -> "^" + DeliveredSession.DATE + "$";
            case "format", "chosen", "technique" -> null;
            default -> field.isFakeContainerItemScope() ? null : "\\S";
        };
    }

    private static @Nullable Integer mostItems(FieldScope field) {
        Class<?> owner = field.getDeclaringType().getErasedType();
        if (owner == Limb.class && field.getDeclaredName().equals("segments")) {
            return CaseFile.MOST_SEGMENTS;
        }
        return owner == FollowUp.FollowedLimb.class && field.getDeclaredName().equals("visits")
                ? FollowUp.MOST_VISITS
                : null;
    }

    /** A visit may have looked at no segment. */
    private static @Nullable Integer atLeastOne(FieldScope field) {
        boolean ofAVisit = field.getDeclaringType().getErasedType() == FollowUp.Visit.class;
        return List.of("limbs", "segments", "treated").contains(field.getDeclaredName()) && !ofAVisit ? 1 : null;
    }

    private static Class<?> element(FieldScope field) {
        return field.getType().getErasedType();
    }
}
