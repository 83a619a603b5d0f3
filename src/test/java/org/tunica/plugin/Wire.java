package org.tunica.plugin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.Tunica;
import org.tunica.fhir.HookAnswer;
import org.tunica.fhir.HookRequest;
import org.tunica.fhir.HookService;
import org.tunica.fhir.Site;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The service of the invented clinic and what it answers, each demo call answered once. */
public final class Wire {
    public static final LocalDate DAY = LocalDate.of(2026, 3, 20);
    public static final List<String> CALLS = List.of("patient-view", "order-select", "order-sign");
    private static final JsonMapper JSON = new JsonMapper();
    private static final Path FOLDER = Path.of("knowledge/demo/fhir");
    private static final Tunica TUNICA = Tunica.shipped();
    private static final HookService SERVICE =
            new HookService(TUNICA, Site.read("site.yaml", file("site.yaml"), TUNICA));
    private static final Map<String, ObjectNode> ANSWERS = new TreeMap<>();
    private static int names;

    private Wire() {}

    public static HookService service() {
        return SERVICE;
    }

    public static byte[] file(String name) {
        try {
            return Files.readAllBytes(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A demo call as a tree to be changed. */
    public static ObjectNode call(String name) {
        return (ObjectNode) JSON.readTree(file(name + ".json"));
    }

    public static HookAnswer answer(JsonNode call) {
        return SERVICE.answer(
                HookRequest.read("call", JSON.writeValueAsBytes(call)),
                DAY,
                () -> String.format("00000000-0000-4000-8000-%012d", ++names));
    }

    /** The answer to a demo call. */
    public static ObjectNode answered(String name) {
        return ANSWERS.computeIfAbsent(name, any -> answer(call(name)).body());
    }

    /** Everything that goes out: discovery and the answers to the demo calls. */
    public static List<JsonNode> all() {
        List<JsonNode> all = new ArrayList<>(List.of(SERVICE.discovery()));
        CALLS.forEach(name -> all.add(answered(name)));
        all.add(answered("patient-view-without-scan"));
        return all;
    }

    /** An order-sign whose one order is for a technique that a rule excludes. */
    public static ObjectNode excludedOrder() {
        ObjectNode call = call("order-select");
        call.put("hook", "order-sign");
        return call;
    }

    static JsonNode read(String text) {
        return JSON.readTree(text);
    }
}
