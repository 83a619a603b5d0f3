package org.tunica.couch;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Fills the form from the tree of a case, which may be faulty: whatever has a field is shown in it. */
final class CaseTrees {
    /** Beyond it a number is shown as it is written; no number of a case comes near. */
    private static final double LARGEST_PLAIN = 1e15;

    private final CaseAsks asks;
    private final Map<String, List<String>> fields = new LinkedHashMap<>();

    private CaseTrees(CaseAsks asks) {
        this.asks = asks;
    }

    static Typed typed(CaseAsks asks, JsonNode tree) {
        CaseTrees trees = new CaseTrees(asks);
        trees.object(asks.head(), tree, "");
        trees.object(asks.patient(), tree.path("patient"), "patient.");
        trees.object(asks.room(), tree.path("room"), "room.");
        trees.legs(tree.path("limbs"));
        return new Typed(trees.fields);
    }

    private void legs(JsonNode limbs) {
        for (int leg = 0; leg < limbs.size(); leg++) {
            JsonNode limb = limbs.path(leg);
            object(asks.limb(), limb, Typed.leg(leg) + ".");
            for (int at = 0; at < limb.path("segments").size(); at++) {
                String block = Typed.segment(leg, at);
                fields.put(block + ".ref", List.of(""));
                object(asks.segment(), limb.path("segments").path(at), block + ".");
            }
        }
    }

    private void object(List<Ask> some, JsonNode object, String prefix) {
        for (Ask ask : some) {
            JsonNode value = object;
            for (String name : ask.field().split("\\.")) {
                value = value.path(name);
            }
            if (!value.isMissingNode() && !value.isNull()) {
                put(ask, prefix + ask.field(), value);
            }
        }
    }

    private void put(Ask ask, String name, JsonNode value) {
        switch (ask.kind()) {
            case SET -> {
                fields.put(name, List.of(Typed.RECORDED));
                fields.put(name + "[]", texts(value));
            }
            case ORDER -> {
                List<String> words = texts(value);
                for (int i = 0; i < words.size(); i++) {
                    fields.put(name + "[" + i + "]", List.of(words.get(i)));
                }
            }
            case ROWS -> {
                fields.put(name, List.of(Typed.RECORDED));
                for (int i = 0; i < value.size(); i++) {
                    object(ask.row(), value.path(i), name + "[" + i + "].");
                }
            }
            case TEXT, NUMBER, WORD, FLAG -> fields.put(name, List.of(text(value)));
        }
    }

    private static List<String> texts(JsonNode value) {
        return value.isArray() ? value.valueStream().map(CaseTrees::text).toList() : List.of(text(value));
    }

    private static String text(JsonNode value) {
        if (value.isString()) {
            return value.stringValue();
        }
        boolean plain = value.isNumber() && Math.abs(value.doubleValue()) < LARGEST_PLAIN;
        return plain
                ? BigDecimal.valueOf(value.doubleValue()).stripTrailingZeros().toPlainString()
                : value.toString();
    }
}
