package org.tunica.physics;

import java.util.Set;
import org.tunica.casefile.Sha256;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/**
 * Names a set of constants of the heat model: value and range of each, with the draws over them. What the program does with
 * them is no part of it.
 */
record HeatFingerprint(Knowledge knowledge, Set<String> ids) {
    String digest() {
        return Sha256.of(text());
    }

    private String text() {
        StringBuilder text = new StringBuilder("draws " + HeatPlanner.DRAWS + " seed " + Physics.SEED + "\n");
        for (String id : ids) {
            Quantity quantity = knowledge.quantity(id);
            text.append(id + " " + quantity.value() + " " + quantity.low() + " " + quantity.high() + "\n");
        }
        return text.toString();
    }
}
