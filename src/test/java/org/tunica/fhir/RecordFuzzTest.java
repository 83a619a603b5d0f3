package org.tunica.fhir;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import org.tunica.Damage;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever is done to a record or a call, it is read or refused with places and reasons; nothing else is ever thrown. */
class RecordFuzzTest {
    private static final FhirTranslator TRANSLATOR = new FhirTranslator(DemoSite.TUNICA, DemoSite.shown());
    private static int read;
    private static int refused;

    private static final List<String> ODD_VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e308",
            "-0.0",
            "5e-324",
            "123456789012345678901234567890",
            "\"\"",
            "\"\\u0000\"",
            "\"\\u202e\"",
            "[]",
            "{}",
            "[[[]]]",
            "[null,null]",
            "{\"coding\":{}}",
            "{\"coding\":[{\"system\":7,\"code\":[]}]}",
            "\"Patient/p21\"",
            "\"2026-02-30\"",
            "\"9999999-01-01\"",
            "\"+999999999-12-31\"",
            "{\"value\":1e999}",
            "{\"reference\":\"Observation/scan-l1\"}",
            "\"" + "x".repeat(9_000) + "\"");

    @Property(tries = 400, seed = "20260701", shrinking = ShrinkingMode.OFF)
    void changedRecord(@ForAll long seed, @ForAll @IntRange(min = 1, max = 5) int changes) {
        Random random = new Random(seed);
        JsonNode tree = DemoSite.JSON.readTree(DemoSite.file("record.json"));
        for (int i = 0; i < changes; i++) {
            change(tree, random);
        }
        translated(bytes(tree));
    }

    @Property(tries = 150, seed = "20260702", shrinking = ShrinkingMode.OFF)
    void flippedBytes(@ForAll long seed) {
        Random random = new Random(seed);
        byte[] bytes = DemoSite.file("record.json").clone();
        for (int flips = 1 + random.nextInt(3); flips > 0; flips--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        translated(bytes);
    }

    @Property(tries = 120, seed = "20260703", shrinking = ShrinkingMode.OFF)
    void changedCall(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int changes) {
        Random random = new Random(seed);
        JsonNode tree = DemoSite.JSON.readTree(DemoSite.file("order-sign.json"));
        for (int i = 0; i < changes; i++) {
            change(tree, random);
        }
        try {
            HookRequest request = HookRequest.read("call", bytes(tree));
            Orders.of(request, DemoSite.shown().codes());
            Sent sent = Sent.of(request);
            translated(bytes(sent.record()));
        } catch (FaultyInput e) {
            Damage.isTold(e.faults());
        }
    }

    @Property(tries = 150, seed = "20260704", shrinking = ShrinkingMode.OFF)
    void changedFeedback(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int changes) {
        Random random = new Random(seed);
        JsonNode tree = DemoSite.JSON.readTree(DemoSite.file("feedback.json"));
        for (int i = 0; i < changes; i++) {
            change(tree, random);
        }
        try {
            HookFeedback feedback = HookFeedback.read("feedback", bytes(tree));
            assertTrue(feedback.equals(HookFeedback.read("again", bytes(feedback.toJson()))), feedback::toString);
        } catch (FaultyInput e) {
            Damage.isTold(e.faults());
        }
    }

    /** A record that grows without end, in number or in things that cannot be used, is cut off. */
    @Property(tries = 4, seed = "20260705", shrinking = ShrinkingMode.OFF)
    void aFloodOfResources_isRefused(@ForAll @IntRange(min = 6_000, max = 9_000) int resources) {
        ArrayNode list = DemoSite.JSON.createArrayNode();
        for (int i = 0; i < resources; i++) {
            list.addObject().put("resourceType", "Observation").put("id", "o" + i);
        }
        translated(bytes(list));
    }

    /** Many segments that name many members each: the work must not grow with their product. */
    @Example
    void aFloodOfReferences_isReadOrRefused() {
        ObjectNode bundle = (ObjectNode) DemoSite.JSON.readTree(DemoSite.file("record.json"));
        ArrayNode entries = (ArrayNode) bundle.get("entry");
        for (int i = 0; i < 2_000; i++) {
            ObjectNode segment = entries.addObject().putObject("resource").put("resourceType", "Observation");
            segment.put("id", "s" + i).put("status", "final");
            segment.set(
                    "code",
                    DemoSite.JSON.readTree("{\"coding\":[{\"system\":\"urn:tunica:measure\",\"code\":\"segment\"}]}"));
            segment.set("subject", DemoSite.JSON.readTree("{\"reference\":\"Patient/p21\"}"));
            ArrayNode members = segment.putArray("hasMember");
            for (int member = 0; member < 60; member++) {
                members.addObject().put("reference", "https://records.example/Observation/s" + (i + member) % 2_000);
            }
        }
        translated(bytes(bundle));
    }

    @AfterContainer
    static void bothOutcomesWereSeen() {
        assertTrue(read > 100, "read " + read);
        assertTrue(refused > 100, "refused " + refused);
    }

    private static byte[] bytes(JsonNode tree) {
        return tree.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void translated(byte[] bytes) {
        try {
            Translated translated = TRANSLATOR.translate("record", bytes, DemoSite.DAY, "case-1");
            read++;
            assertTrue(translated.unused().size() <= Faults.MOST);
            translated.unused().forEach(one -> assertFalse(one.reason().isBlank(), one::toString));
        } catch (FaultyInput e) {
            refused++;
            Damage.isTold(e.faults());
        }
    }

    private static void change(JsonNode tree, Random random) {
        List<JsonNode> holders = Damage.holders(tree);
        JsonNode holder = holders.get(random.nextInt(holders.size()));
        if (holder instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names = List.copyOf(object.propertyNames());
            String name = names.get(random.nextInt(names.size()));
            switch (random.nextInt(4)) {
                case 0 -> object.remove(name);
                case 1 ->
                    object.set(
                            names.get(random.nextInt(names.size())),
                            object.get(name).deepCopy());
                case 2 ->
                    object.set(name, holders.get(random.nextInt(holders.size())).deepCopy());
                default -> object.set(name, odd(random));
            }
        } else if (holder instanceof ArrayNode array && !array.isEmpty()) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(3)) {
                case 0 -> array.remove(at);
                case 1 -> array.add(array.get(at).deepCopy());
                default -> array.set(at, odd(random));
            }
        }
    }

    private static JsonNode odd(Random random) {
        return DemoSite.JSON.readTree(ODD_VALUES.get(random.nextInt(ODD_VALUES.size())));
    }
}
