package org.tunica.fhir;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.function.Supplier;
import org.tunica.Tunica;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Answers two operations on a patient's record in FHIR R4 as a pure function: the advice for it as resources, and the case
 * it was read as. Nothing is fetched and nothing kept.
 */
public final class RecordService {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String CASE_REF = "from-record";

    private final Tunica tunica;
    private final Site site;
    private final FhirTranslator translator;
    private final Adviser adviser;

    /** A service that says what there is of an advice when it is asked for. */
    public RecordService(Tunica tunica, Site site, Adviser adviser) {
        this.tunica = tunica;
        this.site = site;
        this.translator = new FhirTranslator(tunica, site);
        this.adviser = adviser;
    }

    /**
     * When and by whom a record was sent.
     *
     * @param asker name of the program that sent it
     * @param at when
     * @param day to which ages count
     * @param uuids gives each resource its name
     */
    public record Sending(String asker, Instant at, LocalDate day, Supplier<String> uuids) {}

    /**
     * The advice for a record, as {@link AdviceResources} has it.
     *
     * @param bytes JSON in UTF-8: a Bundle that holds one patient
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    public ObjectNode advice(byte[] bytes, Sending sending) {
        JsonNode record = bundle(bytes);
        Translated read = translator.translate("record", record, sending.day(), CASE_REF);
        AdviceResources.Occasion occasion =
                new AdviceResources.Occasion(patient(record), sending.asker(), sending.at(), sending.uuids());
        return AdviceResources.bundle(tunica, site, adviser.advise(read.caseFile()), occasion);
    }

    /**
     * The case of a record as Parameters: {@code case} holds it as {@code tunica-case/1}, {@code remarks} what was not used.
     *
     * @throws org.tunica.casefile.FaultyInput with every fault and its place
     */
    public ObjectNode asCase(byte[] bytes, Sending sending) {
        Translated read = translator.translate("record", bundle(bytes), sending.day(), CASE_REF);
        String json = tunica.toJson(read.caseFile());
        ObjectNode parameters = NODES.objectNode().put("resourceType", "Parameters");
        ArrayNode list = parameters.putArray("parameter");
        list.addObject()
                .put("name", "case")
                .putObject("resource")
                .put("resourceType", "Binary")
                .put("contentType", "application/json")
                .put("data", Base64.getEncoder().encodeToString(json.getBytes(StandardCharsets.UTF_8)));
        list.addObject().put("name", "remarks").set("resource", remarks(read));
        return parameters;
    }

    private static JsonNode bundle(byte[] bytes) {
        JsonNode record = JsonText.parseRecord("record", bytes);
        if (!new Part(record, "$").text("resourceType").equals("Bundle")) {
            throw new FaultyInput("record", List.of(new Fault("$.resourceType", "must be Bundle")));
        }
        return record;
    }

    private static String patient(JsonNode record) {
        return Gathered.of(record, new Notes()).of("Patient").stream()
                .map(patient -> patient.part().text("id"))
                .filter(id -> HookRequest.ID.matcher(id).matches())
                .findFirst()
                .map("Patient/"::concat)
                .orElseThrow(
                        () -> new FaultyInput("record", List.of(new Fault("$.entry", "holds no Patient with an id"))));
    }

    private static ObjectNode remarks(Translated read) {
        ObjectNode outcome = NODES.objectNode().put("resourceType", "OperationOutcome");
        ArrayNode issues = outcome.putArray("issue");
        issues.addObject()
                .put("severity", "information")
                .put("code", "informational")
                .put("diagnostics", read.unused().size() + " things of the record were not used");
        read.unused()
                .forEach(one -> issues.addObject()
                        .put("severity", "warning")
                        .put("code", "informational")
                        .put("diagnostics", one.toString()));
        return outcome;
    }
}
