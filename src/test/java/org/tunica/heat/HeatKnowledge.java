package org.tunica.heat;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** The heat files of knowledge/ as tests read them. */
final class HeatKnowledge {
    static final String[] FILES = {
        "knowledge/tissue.yaml", "knowledge/heat-devices.yaml", "knowledge/limits/heat-settings.yaml"
    };

    private static final Map<String, JsonNode> ENTRIES = read(FILES);

    private HeatKnowledge() {}

    static Map<String, JsonNode> read(String... files) {
        Map<String, JsonNode> entries = new LinkedHashMap<>();
        for (String file : files) {
            try (InputStream in = HeatKnowledge.class.getClassLoader().getResourceAsStream(file)) {
                new YAMLMapper().readTree(in).properties().forEach(e -> entries.put(e.getKey(), e.getValue()));
            } catch (IOException e) {
                throw new IllegalStateException(file, e);
            }
        }
        return entries;
    }

    static Set<String> ids() {
        return new TreeMap<>(ENTRIES).keySet();
    }

    static JsonNode entry(String id) {
        JsonNode entry = ENTRIES.get(id);
        if (entry == null) {
            throw new IllegalArgumentException("no " + id);
        }
        return entry;
    }

    static double value(String id) {
        return entry(id).get("value").asDouble();
    }

    static double low(String id) {
        return entry(id).has("low") ? entry(id).get("low").asDouble() : value(id);
    }

    static double high(String id) {
        return entry(id).has("high") ? entry(id).get("high").asDouble() : value(id);
    }

    static HeatConstants constants() {
        return HeatConstants.from(HeatKnowledge::value);
    }

    static HeatNumbers numbers() {
        return new HeatNumbers(HeatKnowledge::value, HeatKnowledge::low, HeatKnowledge::high);
    }

    /** The constants with some of them replaced. */
    static HeatConstants constants(Map<String, Double> replaced) {
        ToDoubleFunction<String> number = id -> replaced.getOrDefault(id, value(id));
        return HeatConstants.from(number);
    }
}
