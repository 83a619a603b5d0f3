package org.tunica.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Reads the fields of one JSON or YAML object and notes every fault with its path instead of stopping at the first.
 *
 * <p>A field that is absent or null is unknown (an empty Optional). After the last field call {@link #done()}: it
 * reports each field nobody asked for. Values returned for faulty required fields are placeholders; the caller must end
 * with {@link Faults#throwIfAny(String)} before it uses anything.
 */
public final class FieldReader {
    private static final int LONGEST_ECHO = 60;

    /** Kept, for a base of past cases asks for the same few lists millions of times. */
    private static final ClassValue<List<String>> SPELLINGS = new ClassValue<>() {
        @Override
        protected List<String> computeValue(Class<?> words) {
            return Arrays.stream(words.getEnumConstants())
                    .map(constant -> ((Word) constant).word())
                    .toList();
        }
    };

    private final JsonNode node;
    private final String path;
    private final Faults faults;
    private final Set<String> asked = new LinkedHashSet<>();

    /** A reader of {@code node}; a node that is no object is a fault and reads as empty. */
    public FieldReader(JsonNode node, String path, Faults faults) {
        this.node = node;
        this.path = path;
        this.faults = faults;
        if (!node.isObject()) {
            faults.add(path.endsWith(":") ? path.substring(0, path.length() - 1) : path, notAnObject(node));
        }
    }

    private FieldReader(String path, Faults faults) {
        this.node = JsonNodeFactory.instance.missingNode();
        this.path = path;
        this.faults = faults;
    }

    /** A reader of an input whose fault is noted already: nothing is in it, and nothing more is asked of it. */
    public static FieldReader ofUnreadable(String path, Faults faults) {
        return new FieldReader(path, faults);
    }

    /** Whether this is an object at all; its fault is noted if not. */
    public boolean readable() {
        return node.isObject();
    }

    /** The path of this object. */
    public String path() {
        return path;
    }

    /** The names of all fields present, in file order. */
    public List<String> names() {
        return node.isObject() ? List.copyOf(node.propertyNames()) : List.of();
    }

    /** Notes a fault at one of this object's fields. */
    public void fault(String field, String says) {
        faults.add(place(field), says);
    }

    /** A text, or unknown. */
    public Optional<String> text(String field) {
        return value(field).flatMap(value -> {
            if (value.isString() && !value.stringValue().isBlank()) {
                return Optional.of(value.stringValue());
            }
            fault(field, "must be a text that is not empty, is " + kind(value));
            return Optional.empty();
        });
    }

    /** A text that must be there; an empty text stands in for a missing one. */
    public String requiredText(String field) {
        return required(field, text(field)).orElse("");
    }

    /** A finite number, or unknown. */
    public OptionalDouble number(String field) {
        Optional<JsonNode> value = value(field);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!value.get().isNumber()) {
            fault(field, "must be a number, is " + kind(value.get()));
            return OptionalDouble.empty();
        }
        double number = value.get().doubleValue();
        if (!Double.isFinite(number)) {
            fault(field, "must be a finite number");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number + 0.0); // makes a nought of a minus nought
    }

    /** A number that must be there; NaN stands in for a missing one. */
    public double requiredNumber(String field) {
        OptionalDouble number = number(field);
        required(field, number.isPresent() ? Optional.of(number) : Optional.empty());
        return number.orElse(Double.NaN);
    }

    /** Yes or no, or unknown. */
    public Optional<Boolean> flag(String field) {
        return value(field).flatMap(value -> {
            if (value.isBoolean()) {
                return Optional.of(value.booleanValue());
            }
            fault(field, "must be true or false, is " + kind(value));
            return Optional.empty();
        });
    }

    /** A word of a closed list, or unknown. */
    public <E extends Enum<E> & Word> Optional<E> word(String field, Class<E> words) {
        List<String> known = spellings(words);
        return text(field).flatMap(written -> {
            int at = known.indexOf(written);
            if (at >= 0) {
                return Optional.of(words.getEnumConstants()[at]);
            }
            fault(field, unknownWord(written, known));
            return Optional.empty();
        });
    }

    /** A word that must be there; the first of the list stands in for a missing one. */
    public <E extends Enum<E> & Word> E requiredWord(String field, Class<E> words) {
        return required(field, word(field, words)).orElse(words.getEnumConstants()[0]);
    }

    /** One of some known ids, or none. */
    public Optional<String> id(String field, Collection<String> known) {
        return text(field).filter(written -> {
            if (!known.contains(written)) {
                fault(field, unknownWord(written, known));
            }
            return known.contains(written);
        });
    }

    /** A set of known ids in alphabetical order, or unknown; an empty list is known to be empty. */
    public Optional<Set<String>> ids(String field, Collection<String> known) {
        return value(field).map(value -> {
            Set<String> read = new TreeSet<>();
            for (Element element : elements(field, value)) {
                readId(element, known, read);
            }
            return read;
        });
    }

    /** A set of words of a closed list, or unknown. */
    public <E extends Enum<E> & Word> Optional<Set<E>> words(String field, Class<E> words) {
        List<String> known = spellings(words);
        return ids(field, known)
                .map(read -> read.stream()
                        .map(word -> words.getEnumConstants()[known.indexOf(word)])
                        .collect(Collectors.toCollection(LinkedHashSet::new)));
    }

    /** Words of a closed list in the order of the file, each at most once, or unknown. */
    public <E extends Enum<E> & Word> Optional<List<E>> wordsInOrder(String field, Class<E> words) {
        List<String> known = spellings(words);
        return value(field).map(value -> {
            Set<String> read = new LinkedHashSet<>();
            for (Element element : elements(field, value)) {
                readId(element, known, read);
            }
            return read.stream()
                    .map(word -> words.getEnumConstants()[known.indexOf(word)])
                    .toList();
        });
    }

    /** An object, or unknown. */
    public Optional<FieldReader> object(String field) {
        return value(field).map(value -> new FieldReader(value, place(field), faults));
    }

    /** A reader of a part that is absent: an empty object, so that everything in it is unknown. */
    public FieldReader emptyPart(String field) {
        return new FieldReader(JsonNodeFactory.instance.objectNode(), place(field), faults);
    }

    /** The objects this object holds, by name in file order; an entry that is none is a fault. */
    public Map<String, FieldReader> parts() {
        Map<String, FieldReader> parts = new LinkedHashMap<>();
        for (String name : names()) {
            asked.add(name);
            parts.put(name, new FieldReader(node.get(name), place(name), faults));
        }
        return parts;
    }

    /** The objects of a list, or unknown. */
    public Optional<List<FieldReader>> objects(String field) {
        return value(field).map(value -> {
            List<FieldReader> readers = new ArrayList<>();
            for (Element element : elements(field, value)) {
                readers.add(new FieldReader(element.node(), element.path(), faults));
            }
            return readers;
        });
    }

    /** The texts of a list; an absent list is empty. */
    public List<String> texts(String field) {
        List<String> read = new ArrayList<>();
        value(field).ifPresent(value -> {
            for (Element element : elements(field, value)) {
                if (element.node().isString()) {
                    read.add(element.node().stringValue());
                } else {
                    faults.add(element.path(), "must be a text, is " + kind(element.node()));
                }
            }
        });
        return read;
    }

    /** Whether the field stands in the file with a value. */
    public boolean has(String field) {
        return node.isObject() && node.hasNonNull(field);
    }

    /** Whether the value of a field is a list. */
    public boolean isList(String field) {
        return has(field) && node.get(field).isArray();
    }

    /** Notes a fault when the field is missing from an object. */
    public <T> Optional<T> required(String field, Optional<T> value) {
        if (value.isEmpty() && readable() && !has(field)) {
            fault(field, "must be given");
        }
        return value;
    }

    /** Reports every field nobody asked for, with the nearest known one. */
    public void done() {
        for (String name : names()) {
            if (!asked.contains(name)) {
                fault(shorten(name), "is not a field of this object" + Nearest.hint(name, asked));
            }
        }
    }

    private void readId(Element element, Collection<String> known, Set<String> read) {
        if (!element.node().isString()) {
            faults.add(element.path(), "must be a text, is " + kind(element.node()));
            return;
        }
        String written = element.node().stringValue();
        if (!known.contains(written)) {
            faults.add(element.path(), unknownWord(written, known));
        } else if (!read.add(written)) {
            faults.add(element.path(), "\"" + written + "\" stands twice in the list");
        }
    }

    private Optional<JsonNode> value(String field) {
        asked.add(field);
        return has(field) ? Optional.of(node.get(field)) : Optional.empty();
    }

    private List<Element> elements(String field, JsonNode value) {
        if (!value.isArray()) {
            fault(field, "must be a list, is " + kind(value));
            return List.of();
        }
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < value.size(); i++) {
            elements.add(new Element(value.get(i), place(field) + "[" + i + "]"));
        }
        return elements;
    }

    private String place(String field) {
        return path + (path.endsWith(":") ? " " : ".") + field;
    }

    private static String unknownWord(String written, Collection<String> known) {
        String hint = Nearest.hint(written, known);
        String list = known.size() <= 12 ? "; known words: " + String.join(", ", known) : "";
        return "\"" + shorten(written) + "\" is not a known word" + hint + list;
    }

    private static <E extends Enum<E> & Word> List<String> spellings(Class<E> words) {
        return SPELLINGS.get(words);
    }

    private static String notAnObject(JsonNode node) {
        return node.isMissingNode() ? "is empty" : "must be an object, is " + kind(node);
    }

    private static String kind(JsonNode value) {
        if (value.isObject()) {
            return "an object";
        }
        if (value.isArray()) {
            return "a list";
        }
        if (value.isString() && value.stringValue().isBlank()) {
            return "empty";
        }
        return shorten(value.toString());
    }

    /** A text of the input, short enough for a message. */
    static String shorten(String text) {
        return text.length() <= LONGEST_ECHO ? text : text.substring(0, LONGEST_ECHO) + "...";
    }

    private record Element(JsonNode node, String path) {}
}
