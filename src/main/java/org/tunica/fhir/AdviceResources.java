package org.tunica.fhir;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tunica.Tunica;
import org.tunica.plan.Advice;
import org.tunica.plan.AdviceSoFar;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * An advice as resources of a record: the answer ({@code GuidanceResponse}) with what is missing, the options as a proposal
 * ({@code RequestGroup}) of which none need be taken, where it comes from ({@code Provenance}) and that it was given ({@code
 * AuditEvent}). Ids only; our codes first, then those a site has switched on.
 */
public final class AdviceResources {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Tunica tunica;
    private final Codes codes;
    private final AdviceSoFar soFar;
    private final Advice advice;
    private final Occasion occasion;
    private final String guidanceUrl;
    private final String groupUrl;

    /**
     * What only the caller knows.
     *
     * @param patient reference to the patient, for example {@code Patient/p21}
     * @param asker reference to the person who asked, for example {@code Practitioner/d4}, or the name of a program
     * @param recorded when
     * @param uuids gives each resource its name, without {@code urn:uuid:}
     */
    public record Occasion(String patient, String asker, Instant recorded, Supplier<String> uuids) {}

    private AdviceResources(Tunica tunica, Codes codes, AdviceSoFar soFar, Occasion occasion) {
        this.tunica = tunica;
        this.codes = codes;
        this.soFar = soFar;
        this.advice = soFar.advice();
        this.occasion = occasion;
        this.guidanceUrl = "urn:uuid:" + occasion.uuids().get();
        this.groupUrl = "urn:uuid:" + occasion.uuids().get();
    }

    /** The advice as a Bundle of the type {@code collection}; same advice and occasion, same Bundle. */
    public static ObjectNode bundle(Tunica tunica, Site site, Advice advice, Occasion occasion) {
        return bundle(tunica, site, AdviceSoFar.whole(advice), occasion);
    }

    /** The same of an advice that may not be whole; then nothing is proposed yet. */
    public static ObjectNode bundle(Tunica tunica, Site site, AdviceSoFar soFar, Occasion occasion) {
        return new AdviceResources(tunica, site.codes(), soFar, occasion).bundle();
    }

    private ObjectNode bundle() {
        ObjectNode group = new Proposal(tunica, codes, advice, occasion).group();
        boolean proposes = group.has("action") && soFar.isWhole();
        ObjectNode bundle = NODES.objectNode().put("resourceType", "Bundle").put("type", "collection");
        ArrayNode entries = bundle.putArray("entry");
        List<String> targets = new ArrayList<>(List.of(guidanceUrl));
        entry(entries, guidanceUrl, guidance(proposes));
        if (proposes) {
            entry(entries, groupUrl, group);
            targets.add(groupUrl);
        }
        entry(entries, "urn:uuid:" + occasion.uuids().get(), provenance(targets));
        entry(entries, "urn:uuid:" + occasion.uuids().get(), audit());
        return Pruned.of(bundle);
    }

    private static void entry(ArrayNode entries, String url, ObjectNode resource) {
        entries.addObject().put("fullUrl", url).set("resource", resource);
    }

    private ObjectNode guidance(boolean proposes) {
        List<Missing> missing = Missing.of(advice, tunica.knowledge().glossary());
        ObjectNode guidance = NODES.objectNode().put("resourceType", "GuidanceResponse");
        guidance.putArray("contained").add(remarks(missing));
        guidance.put("moduleUri", release()).put("status", status(missing));
        guidance.set("subject", reference(occasion.patient()));
        guidance.put("occurrenceDateTime", occasion.recorded().toString());
        guidance.putArray("note").addObject().put("text", advice.caution());
        guidance.putArray("evaluationMessage").add(reference("#remarks"));
        if (proposes) {
            guidance.set("result", reference(groupUrl));
        }
        ArrayNode requirements = guidance.putArray("dataRequirement");
        missing.forEach(one -> requirements.add(requirement(one)));
        return guidance;
    }

    /** Whether everything is judged, something would help, or nothing can be ranked before it is recorded or computed. */
    private String status(List<Missing> missing) {
        if (!soFar.isWhole()) {
            return "in-progress";
        }
        if (advice.segments().stream().anyMatch(Missing::stops)) {
            return "data-required";
        }
        return missing.isEmpty() ? "success" : "data-requested";
    }

    private ObjectNode remarks(List<Missing> missing) {
        ObjectNode outcome =
                NODES.objectNode().put("resourceType", "OperationOutcome").put("id", "remarks");
        ArrayNode issues = outcome.putArray("issue");
        issues.addObject()
                .put("severity", "information")
                .put("code", "informational")
                .put("diagnostics", Words.of(advice.release()) + ". " + advice.caution());
        if (!soFar.isWhole()) {
            issues.addObject()
                    .put("severity", "information")
                    .put("code", "incomplete")
                    .put("diagnostics", "The advice is still being computed and nothing is proposed before; ask again");
        }
        missing.forEach(one -> issues.addObject()
                .put("severity", "warning")
                .put("code", "incomplete")
                .put(
                        "diagnostics",
                        Words.of(one.segment()) + ": " + one.noun() + " is not recorded; " + one.waiting()
                                + (one.waiting() == 1 ? " technique waits" : " techniques wait") + " for it"));
        return outcome;
    }

    private ObjectNode requirement(Missing missing) {
        ObjectNode requirement = NODES.objectNode();
        ArrayNode extensions = requirement.putArray("extension");
        extensions
                .addObject()
                .put("url", Codes.OWN + "segment")
                .put("valueString", missing.segment().ref());
        extensions.addObject().put("url", Codes.OWN + "missing").put("valueString", missing.noun());
        requirement.put("type", missing.measure().map(AdviceResources::type).orElse("Observation"));
        missing.measure().filter(measure -> !CaseAssembly.complete(measure)).ifPresent(measure -> {
            ObjectNode filter = requirement.putArray("codeFilter").addObject().put("path", "code");
            ArrayNode coded = filter.putArray("code");
            codes.codings(Codes.MEASURE, measure.word())
                    .forEach(coding ->
                            coded.addObject().put("system", coding.system()).put("code", coding.code()));
        });
        return requirement;
    }

    private static String type(Measure measure) {
        return switch (measure) {
            case ALLERGIES_COMPLETE -> "AllergyIntolerance";
            case CONDITIONS_COMPLETE -> "Condition";
            case SEX -> "Patient";
            default -> "Observation";
        };
    }

    private ObjectNode provenance(List<String> targets) {
        ObjectNode provenance = NODES.objectNode().put("resourceType", "Provenance");
        ArrayNode target = provenance.putArray("target");
        targets.forEach(url -> target.add(reference(url)));
        provenance.put("recorded", occasion.recorded().toString());
        ObjectNode agent = provenance.putArray("agent").addObject();
        agent.putObject("type")
                .putArray("coding")
                .addObject()
                .put("system", "http://terminology.hl7.org/CodeSystem/provenance-participant-type")
                .put("code", "assembler");
        agent.putObject("who").put("display", "Tunica, " + Words.of(advice.release()));
        ArrayNode entities = provenance.putArray("entity");
        source(entities, "release", advice.release().version());
        source(entities, "digest", advice.release().digest());
        return provenance;
    }

    private static void source(ArrayNode entities, String what, String value) {
        entities.addObject()
                .put("role", "source")
                .putObject("what")
                .putObject("identifier")
                .put("system", Codes.OWN + what)
                .put("value", value);
    }

    private ObjectNode audit() {
        ObjectNode audit = NODES.objectNode().put("resourceType", "AuditEvent");
        audit.putObject("type")
                .put("system", "http://terminology.hl7.org/CodeSystem/audit-event-type")
                .put("code", "rest");
        audit.put("action", "E").put("recorded", occasion.recorded().toString()).put("outcome", "0");
        ObjectNode agent = audit.putArray("agent").addObject().put("requestor", true);
        agent.set("who", asker());
        audit.putObject("source").putObject("observer").put("display", "Tunica, " + Words.of(advice.release()));
        ArrayNode entities = audit.putArray("entity");
        entities.addObject().set("what", reference(occasion.patient()));
        entities.addObject().set("what", reference(guidanceUrl));
        return audit;
    }

    private ObjectNode asker() {
        if (occasion.asker().contains("/")) {
            return reference(occasion.asker());
        }
        ObjectNode program = NODES.objectNode();
        program.putObject("identifier").put("system", Codes.OWN + "caller").put("value", occasion.asker());
        return program;
    }

    private String release() {
        return Codes.OWN + "release:" + advice.release().version();
    }

    static ObjectNode reference(String to) {
        return NODES.objectNode().put("reference", to);
    }
}
