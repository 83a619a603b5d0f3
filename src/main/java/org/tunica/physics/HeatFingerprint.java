package org.tunica.physics;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Set;
import org.tunica.knowledge.Knowledge;
import org.tunica.knowledge.Quantity;

/**
 * Names a set of constants of the heat model: value and range of each, with the draws over them. What the program does with
 * them is no part of it.
 */
record HeatFingerprint(Knowledge knowledge, Set<String> ids) {
    String digest() {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            sha256.update(text().getBytes(StandardCharsets.UTF_8));
            return "sha256:" + HexFormat.of().formatHex(sha256.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
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
