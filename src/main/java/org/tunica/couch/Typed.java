package org.tunica.couch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in the fields of the form, by their names, which are JSON paths. Whatever was typed is in it, whether it can be
 * read or not. Legs and segments are counted from 0 without gaps.
 */
record Typed(Map<String, List<String>> fields) {
    /** What a field holds that may be answered with "none of these", when it is answered. */
    static final String RECORDED = "recorded";

    private static final Pattern LEG = Pattern.compile("limbs\\[(\\d{1,2})](.*)");
    private static final Pattern SEGMENT = Pattern.compile("\\.segments\\[(\\d{1,2})](.*)");

    private static final Pattern ROW = Pattern.compile("\\[(\\d{1,3})].*");

    Typed {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        fields.forEach((name, values) -> copy.put(name, List.copyOf(values)));
        fields = Collections.unmodifiableMap(copy);
    }

    /** A form in which one segment of one leg waits to be filled in. */
    static Typed blank() {
        return new Typed(Map.of(segment(0, 0) + ".ref", List.of("")));
    }

    static String leg(int leg) {
        return "limbs[" + leg + "]";
    }

    static String segment(int leg, int segment) {
        return leg(leg) + ".segments[" + segment + "]";
    }

    /** The text of a field; empty where nothing stands. */
    String text(String field) {
        List<String> values = fields.getOrDefault(field, List.of());
        return values.isEmpty() ? "" : values.get(0).strip();
    }

    List<String> all(String field) {
        return fields.getOrDefault(field, List.of());
    }

    /** How many legs there are. */
    int legs() {
        return indexes(LEG, "").size();
    }

    /** How many segments a leg has. */
    int segments(int leg) {
        return indexes(SEGMENT, leg(leg)).size();
    }

    /** How many rows of a list reach to the last one in which something stands. */
    int rows(String list) {
        int last = 0;
        for (String name : fields.keySet()) {
            Matcher row = ROW.matcher(name.startsWith(list) ? name.substring(list.length()) : "");
            if (row.matches() && !text(name).isEmpty()) {
                last = Math.max(last, Integer.parseInt(row.group(1)) + 1);
            }
        }
        return last;
    }

    private TreeSet<Integer> indexes(Pattern pattern, String prefix) {
        TreeSet<Integer> found = new TreeSet<>();
        for (String name : fields.keySet()) {
            if (name.startsWith(prefix)) {
                Matcher matcher = pattern.matcher(name.substring(prefix.length()));
                if (matcher.matches()) {
                    found.add(Integer.parseInt(matcher.group(1)));
                }
            }
        }
        return found;
    }

    /** The same with legs and segments counted without gaps. */
    Typed counted() {
        List<Integer> legs = new ArrayList<>(indexes(LEG, ""));
        Map<String, List<String>> renamed = new LinkedHashMap<>();
        fields.forEach((name, values) -> renamed.put(counted(name, legs), values));
        return new Typed(renamed);
    }

    private String counted(String name, List<Integer> legs) {
        Matcher leg = LEG.matcher(name);
        if (!leg.matches()) {
            return name;
        }
        int was = Integer.parseInt(leg.group(1));
        String front = leg(legs.indexOf(was));
        Matcher segment = SEGMENT.matcher(leg.group(2));
        if (!segment.matches()) {
            return front + leg.group(2);
        }
        List<Integer> segments = new ArrayList<>(indexes(SEGMENT, leg(was)));
        return front + ".segments[" + segments.indexOf(Integer.parseInt(segment.group(1))) + "]" + segment.group(2);
    }

    /** The same with a field that holds one text. */
    Typed with(String field, String text) {
        Map<String, List<String>> more = new LinkedHashMap<>(fields);
        more.put(field, List.of(text));
        return new Typed(more);
    }

    /** The same without a block and all in it. */
    Typed without(String block) {
        Map<String, List<String>> fewer = new LinkedHashMap<>(fields);
        fewer.keySet().removeIf(name -> name.startsWith(block + "."));
        return new Typed(fewer).counted();
    }

    /** The same with a block as it stands in another form, and nothing else of it. */
    Typed taking(String block, Typed other) {
        Map<String, List<String>> taken = new LinkedHashMap<>(without(block).fields());
        other.fields().forEach((name, values) -> {
            if (name.startsWith(block + ".")) {
                taken.put(name, values);
            }
        });
        return new Typed(taken);
    }

    /** The same with all of one block in another one, too. */
    Typed copied(String from, String to) {
        Map<String, List<String>> more = new LinkedHashMap<>(fields);
        fields.forEach((name, values) -> {
            if (name.startsWith(from + ".")) {
                more.put(to + name.substring(from.length()), values);
            }
        });
        return new Typed(more);
    }
}
