package org.tunica.couch;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What was typed into a form, as a tree for the one reader of its contract. What is no number or no known word goes into it
 * as it was typed, so that the reader refuses it at its place. An empty field is unknown and stands nowhere.
 */
final class TypedTree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,17})(\\.[0-9]{1,18})?");

    private final Typed typed;
    private final Faults faults = new Faults();
    private final Map<String, String> moved = new HashMap<>();

    TypedTree(Typed typed) {
        this.typed = typed;
    }

    /** What contradicts itself in the form alone, by the names of its fields. */
    List<Fault> faults() {
        return faults.list();
    }

    /** The field of the form in which something stands that has this place in the tree. */
    String field(String place) {
        String path = place.replaceFirst("^\\$\\.?", "");
        return moved.getOrDefault(path, path);
    }

    /** Puts all that was typed of an object into it. */
    void object(ObjectNode into, List<Ask> asks, String prefix) {
        asks.forEach(ask -> add(into, ask, prefix + ask.field()));
    }

    private void add(ObjectNode into, Ask ask, String name) {
        switch (ask.kind()) {
            case SET -> set(into, ask, name);
            case ORDER -> order(into, ask, name);
            case ROWS -> rows(into, ask, name);
            case TEXT, NUMBER, WORD, FLAG -> {
                if (!typed.text(name).isEmpty()) {
                    put(into, ask.field(), value(ask.kind(), typed.text(name)));
                }
            }
        }
    }

    private static void put(ObjectNode into, String field, JsonNode value) {
        int dot = field.indexOf('.');
        if (dot < 0) {
            into.set(field, value);
            return;
        }
        String outer = field.substring(0, dot);
        ObjectNode inside = into.get(outer) instanceof ObjectNode there ? there : into.putObject(outer);
        put(inside, field.substring(dot + 1), value);
    }

    private static JsonNode value(Ask.Kind kind, String text) {
        if (kind == Ask.Kind.NUMBER && NUMBER.matcher(text).matches()) {
            return NODES.numberNode(new BigDecimal(text));
        }
        if (kind == Ask.Kind.FLAG && Set.of("true", "false").contains(text)) {
            return NODES.booleanNode(text.equals("true"));
        }
        return NODES.stringNode(text);
    }

    private void set(ObjectNode into, Ask ask, String name) {
        List<String> ticked = typed.all(name + "[]");
        if (recorded(name, !ticked.isEmpty())) {
            ArrayNode words = NODES.arrayNode();
            ticked.forEach(words::add);
            put(into, ask.field(), words);
        }
    }

    /** A list that is only half marked as known would either lose what was ticked or claim that the rest was asked. */
    private boolean recorded(String name, boolean filled) {
        boolean recorded = typed.text(name).equals(Typed.RECORDED);
        if (!recorded && filled) {
            faults.add(name, "holds something and is marked as not recorded; it is one or the other");
        }
        return recorded;
    }

    private void order(ObjectNode into, Ask ask, String name) {
        ArrayNode words = NODES.arrayNode();
        for (int i = 0; i < ask.choices().size(); i++) {
            String field = name + "[" + i + "]";
            String word = typed.text(field);
            if (!word.isEmpty()) {
                moved.put(name + "[" + words.size() + "]", field);
                words.add(word);
            }
        }
        if (!words.isEmpty()) {
            put(into, ask.field(), words);
        }
    }

    private void rows(ObjectNode into, Ask ask, String name) {
        ArrayNode rows = NODES.arrayNode();
        for (int i = 0; i < typed.rows(name); i++) {
            String prefix = name + "[" + i + "].";
            ObjectNode row = NODES.objectNode();
            object(row, ask.row(), prefix);
            if (!row.isEmpty()) {
                String at = name + "[" + rows.size() + "].";
                ask.row().forEach(one -> moved.put(at + one.field(), prefix + one.field()));
                rows.add(row);
            }
        }
        if (recorded(name, !rows.isEmpty())) {
            put(into, ask.field(), rows);
        }
    }
}
