package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The heat files of knowledge/: every number is read, every number read is there, and each says where it comes from. */
class HeatConstantsTest {
    private static final Set<String> COMMON_SOURCES = Set.of("S-0900", "S-0901", "S-0902", "S-0903");

    @Test
    void everyIdIsRead_andNoOther() {
        Set<String> read = new TreeSet<>();
        ToDoubleFunction<String> number = id -> {
            read.add(id);
            return HeatKnowledge.value(id);
        };
        HeatConstants.from(number);
        HeatLimits.from(number);
        assertEquals(HeatKnowledge.ids(), read);
    }

    @Test
    void missingId_isNamed() {
        ToDoubleFunction<String> number = id -> {
            if (id.equals("tissue.wall.water")) {
                throw new IllegalArgumentException("no " + id);
            }
            return HeatKnowledge.value(id);
        };
        String message = assertThrows(IllegalArgumentException.class, () -> HeatConstants.from(number))
                .getMessage();
        assertTrue(message.contains("tissue.wall.water"), message);
    }

    @Test
    void everyEntryIsComplete() {
        Set<String> allowed =
                Set.of("says", "value", "low", "high", "unit", "source", "status", "since", "change", "note");
        Set<String> statuses = Set.of("published", "guideline", "consensus", "local", "unverified");
        for (String id : HeatKnowledge.ids()) {
            JsonNode entry = HeatKnowledge.entry(id);
            entry.properties()
                    .forEach(field -> assertTrue(allowed.contains(field.getKey()), id + " " + field.getKey()));
            for (String field : new String[] {"says", "unit", "source", "since", "change"}) {
                assertTrue(entry.get(field).isString() || field.equals("since"), id + " " + field);
            }
            assertTrue(entry.get("value").isNumber(), id + " value");
            assertTrue(statuses.contains(entry.get("status").asString()), id);
            assertTrue(HeatKnowledge.low(id) <= HeatKnowledge.value(id), id);
            assertTrue(HeatKnowledge.high(id) >= HeatKnowledge.value(id), id);
        }
    }

    @Test
    void everySourceExists_andIsUsed() {
        Map<String, JsonNode> sources = HeatKnowledge.read("knowledge/sources-physics.yaml");
        Set<String> used = new TreeSet<>();
        for (String id : HeatKnowledge.ids()) {
            JsonNode entry = HeatKnowledge.entry(id);
            String source = entry.get("source").asString();
            assertTrue(sources.containsKey(source) || COMMON_SOURCES.contains(source), id + " " + source);
            used.add(source);
            if (entry.has("note")) {
                sources.keySet().stream()
                        .filter(entry.get("note").asString()::contains)
                        .forEach(used::add);
            }
        }
        sources.keySet().forEach(id -> assertTrue(used.contains(id), "nobody uses " + id));
    }
}
