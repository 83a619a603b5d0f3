package org.tunica.fhir;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.JsonText;
import tools.jackson.databind.JsonNode;

/**
 * A call of a hook. An access token in it is looked at no further and not kept: nothing is fetched from here.
 *
 * @param hookInstance names this call
 * @param patientId id of the patient whose chart is open
 * @param userId reference to the person at work
 * @param selections references to the drafted orders just picked; empty means all
 * @param drafts the drafted orders
 * @param prefetch what was sent for each key
 */
public record HookRequest(
        Hook hook,
        String hookInstance,
        String patientId,
        String userId,
        List<String> selections,
        List<JsonNode> drafts,
        Map<String, JsonNode> prefetch) {
    static final Pattern UUID =
            Pattern.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");

    static final Pattern ID = Pattern.compile("[A-Za-z0-9.-]{1,64}");
    private static final Pattern USER =
            Pattern.compile("(Practitioner|PractitionerRole|Patient|RelatedPerson)/[A-Za-z0-9.-]{1,64}");
    private static final Pattern SERVER = Pattern.compile("https?://[^\\s\"<>]{1,500}");

    public HookRequest {
        selections = List.copyOf(selections);
        drafts = List.copyOf(drafts);
    }

    /**
     * Reads a call.
     *
     * @param what the name of the input, for messages
     * @param bytes JSON in UTF-8
     * @throws org.tunica.casefile.FaultyInput with every fault and its JSON path
     */
    public static HookRequest read(String what, byte[] bytes) {
        JsonNode tree = JsonText.parseRecord(what, bytes);
        Faults faults = new Faults();
        HookRequest request = read(new FieldReader(tree, "$", faults), tree);
        faults.throwIfAny(what);
        return request;
    }

    private static HookRequest read(FieldReader reader, JsonNode tree) {
        Hook hook = reader.requiredWord("hook", Hook.class);
        String instance = matching(reader, "hookInstance", UUID, "a UUID", true);
        server(reader);
        FieldReader context =
                reader.required("context", reader.object("context")).orElseGet(() -> reader.emptyPart("context"));
        String patient = matching(context, "patientId", ID, "the id of a patient, without a type before it", true);
        String user =
                matching(context, "userId", USER, "a reference to a practitioner, patient or related person", true);
        matching(context, "encounterId", ID, "the id of an encounter", false);
        List<String> selections = hook == Hook.ORDER_SELECT ? context.texts("selections") : List.of();
        List<JsonNode> drafts = hook.aboutOrders() ? drafts(context, tree.path("context")) : List.of();
        return new HookRequest(hook, instance, patient, user, selections, drafts, prefetch(reader, tree));
    }

    /** A token without the server it is for would be useless; so the standard asks for both. */
    private static void server(FieldReader reader) {
        Optional<FieldReader> authorization = reader.object("fhirAuthorization");
        String server = matching(reader, "fhirServer", SERVER, "the web address of a server", false);
        if (authorization.isPresent() && server.isEmpty() && !reader.has("fhirServer")) {
            reader.fault("fhirServer", "must be given where fhirAuthorization is");
        }
    }

    private static List<JsonNode> drafts(FieldReader context, JsonNode tree) {
        context.required("draftOrders", context.object("draftOrders"));
        Part bundle = new Part(tree.path("draftOrders"), "draftOrders");
        if (bundle.present() && !bundle.text("resourceType").equals("Bundle")) {
            context.fault("draftOrders", "must be a Bundle");
        }
        return bundle.list("entry").stream()
                .map(entry -> entry.at("resource").node())
                .filter(JsonNode::isObject)
                .toList();
    }

    private static Map<String, JsonNode> prefetch(FieldReader reader, JsonNode tree) {
        Map<String, JsonNode> prefetch = new LinkedHashMap<>();
        reader.object("prefetch")
                .ifPresent(sent -> tree.path("prefetch")
                        .properties()
                        .forEach(entry -> prefetch.put(entry.getKey(), entry.getValue())));
        return prefetch;
    }

    private static String matching(FieldReader reader, String field, Pattern pattern, String what, boolean required) {
        Optional<String> text = reader.text(field);
        if (required) {
            reader.required(field, text);
        }
        text.filter(written -> !pattern.matcher(written).matches())
                .ifPresent(written -> reader.fault(field, "must be " + what));
        return text.orElse("");
    }

    /** What was sent for a key that may hold resources of some types. */
    Prefetched prefetched(String key, Set<String> types) {
        return prefetch.containsKey(key) ? Prefetched.of(key, prefetch.get(key), types) : Prefetched.absent(key);
    }
}
