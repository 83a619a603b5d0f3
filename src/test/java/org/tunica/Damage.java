package org.tunica;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import tools.jackson.databind.JsonNode;

/** Where a JSON tree can be damaged, and what must be said of the damage. */
public final class Damage {
    private Damage() {}

    /** Every object and list of a tree, itself first. */
    public static List<JsonNode> holders(JsonNode tree) {
        List<JsonNode> holders = new ArrayList<>();
        collect(tree, holders);
        return holders;
    }

    private static void collect(JsonNode node, List<JsonNode> holders) {
        if (node.isContainer()) {
            holders.add(node);
            node.forEach(child -> collect(child, holders));
        }
    }

    /** Some faults, not without end, each with its place and a reason. */
    public static void isTold(List<Fault> faults) {
        assertFalse(faults.isEmpty());
        assertTrue(faults.size() <= Faults.MOST + 1);
        faults.forEach(fault -> {
            assertTrue(fault.place().startsWith("$"), fault::toString);
            assertFalse(fault.says().isBlank(), fault::toString);
        });
    }
}
