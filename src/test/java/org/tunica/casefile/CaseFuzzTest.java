package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.AfterContainer;
import org.tunica.CaseTree;
import org.tunica.Damage;
import org.tunica.knowledge.Bundle;
import org.tunica.knowledge.Knowledge;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever is done to a case file, it reads or ends in faults with their places; nothing else is ever thrown. */
class CaseFuzzTest {
    private static final KnownWords KNOWN = Knowledge.of(Bundle.shipped());
    private static final JsonMapper JSON = new JsonMapper();
    private static int read;
    private static int refused;

    /** Values that are wrong nearly everywhere; the marked one becomes a number too large for a double. */
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
            "\"left\"",
            "\"\\u0000\"",
            "\"" + "x".repeat(5_000) + "\"",
            "[]",
            "{}",
            "[[[]]]",
            "[null, null]",
            "{\"side\": {}}",
            "\"OVERFLOW\"");

    @Property(tries = 1_500, seed = "20260101", shrinking = ShrinkingMode.OFF)
    void changedTree(@ForAll("demos") byte[] demo, @ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int changes) {
        Random random = new Random(seed);
        JsonNode tree = JSON.readTree(demo);
        for (int i = 0; i < changes; i++) {
            change(tree, random);
        }
        readsOrIsRefused(tree.toString().replace("\"OVERFLOW\"", "1e999").getBytes(StandardCharsets.UTF_8));
    }

    @Property(tries = 1_000, seed = "20260102", shrinking = ShrinkingMode.OFF)
    void flippedBytes(@ForAll("demos") byte[] demo, @ForAll long seed, @ForAll @IntRange(min = 1, max = 3) int flips) {
        Random random = new Random(seed);
        byte[] bytes = demo.clone();
        for (int i = 0; i < flips; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        readsOrIsRefused(bytes);
    }

    @Property(tries = 300, seed = "20260103", shrinking = ShrinkingMode.OFF)
    void cutOrDoubledText(@ForAll("demos") byte[] demo, @ForAll long seed) {
        Random random = new Random(seed);
        String text = new String(demo, StandardCharsets.UTF_8);
        int from = random.nextInt(text.length());
        int to = from + random.nextInt(Math.min(200, text.length() - from));
        String piece = text.substring(from, to).repeat(random.nextInt(3));
        readsOrIsRefused((text.substring(0, from) + piece + text.substring(to)).getBytes(StandardCharsets.UTF_8));
    }

    @Property(tries = 200, seed = "20260104", shrinking = ShrinkingMode.OFF)
    void deepNesting(@ForAll("demos") byte[] demo, @ForAll @IntRange(min = 1, max = 60) int depth) {
        JsonNode tree = JSON.readTree(demo);
        String nest = "[".repeat(depth) + "]".repeat(depth);
        String text = tree.toString().replaceFirst("\"great-saphenous\"|\"tributary\"|\"normal\"", nest);
        readsOrIsRefused(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A fuzz that only ever reads, or only ever refuses, would show nothing. */
    @AfterContainer
    static void bothOutcomesWereSeen() {
        assertTrue(read > 50, "read " + read);
        assertTrue(refused > 1_500, "refused " + refused);
    }

    @Provide
    Arbitrary<byte[]> demos() {
        return Arbitraries.of(CaseTree.demoFiles())
                .map(file -> CaseTree.demo(file.getFileName().toString().replace(".json", ""))
                        .bytes());
    }

    private static void readsOrIsRefused(byte[] bytes) {
        try {
            CaseFile.read("case", bytes, KNOWN);
            read++;
        } catch (FaultyInput e) {
            refused++;
            Damage.isTold(e.faults());
        }
    }

    private static void change(JsonNode tree, Random random) {
        List<JsonNode> holders = Damage.holders(tree);
        JsonNode holder = holders.get(random.nextInt(holders.size()));
        if (holder instanceof ObjectNode object && !object.isEmpty()) {
            changeField(object, random);
        } else if (holder instanceof ArrayNode array) {
            changeElement(array, random);
        }
    }

    private static void changeField(ObjectNode object, Random random) {
        List<String> names = List.copyOf(object.propertyNames());
        String name = names.get(random.nextInt(names.size()));
        switch (random.nextInt(5)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(misspelt(name, random), object.remove(name));
            case 2 ->
                object.set(
                        name,
                        object.get(names.get(random.nextInt(names.size()))).deepCopy());
            case 3 -> object.set(misspelt(name, random), object.get(name).deepCopy());
            default -> object.set(name, oddValue(random));
        }
    }

    private static void changeElement(ArrayNode array, Random random) {
        if (array.isEmpty()) {
            array.add(oddValue(random));
            return;
        }
        int at = random.nextInt(array.size());
        switch (random.nextInt(3)) {
            case 0 -> array.remove(at);
            case 1 -> array.add(array.get(at).deepCopy());
            default -> array.set(at, oddValue(random));
        }
    }

    private static String misspelt(String name, Random random) {
        int at = random.nextInt(name.length());
        return name.substring(0, at) + (char) (' ' + random.nextInt(90)) + name.substring(at + 1);
    }

    private static JsonNode oddValue(Random random) {
        return JSON.readTree(ODD_VALUES.get(random.nextInt(ODD_VALUES.size())));
    }
}
