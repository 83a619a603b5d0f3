package org.tunica;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A case as a JSON tree that tests change field by field. */
public final class CaseTree {
    private static final JsonMapper JSON = new JsonMapper();
    private static final Path DEMO = Path.of("knowledge/demo");

    private final ObjectNode root;

    private CaseTree(ObjectNode root) {
        this.root = root;
    }

    /** An invented leg with nothing special: every field recorded, nothing speaks against any technique's use. */
    public static CaseTree soundLeg() {
        return of(resource("/sound-leg.json"));
    }

    public static CaseTree of(byte[] json) {
        return new CaseTree((ObjectNode) JSON.readTree(json));
    }

    /** The shipped demo cases by file name. */
    public static List<Path> demoFiles() {
        try (Stream<Path> files = Files.list(DEMO)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static CaseTree demo(String name) {
        try {
            return of(Files.readAllBytes(DEMO.resolve(name + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public byte[] bytes() {
        return root.toString().getBytes(StandardCharsets.UTF_8);
    }

    public ObjectNode root() {
        return root;
    }

    public CaseTree copy() {
        return new CaseTree(root.deepCopy());
    }

    /** Sets a field by a path such as {@code limbs.0.segments.0.vein}; null removes it. */
    public CaseTree set(String path, Object value) {
        String[] steps = path.split("\\.");
        JsonNode at = root;
        for (int i = 0; i < steps.length - 1; i++) {
            at = at.isArray() ? at.get(Integer.parseInt(steps[i])) : child((ObjectNode) at, steps[i]);
        }
        ObjectNode parent = (ObjectNode) at;
        String last = steps[steps.length - 1];
        if (value == null) {
            parent.remove(last);
        } else {
            parent.set(last, JSON.valueToTree(value));
        }
        return this;
    }

    private static JsonNode child(ObjectNode parent, String name) {
        return parent.hasNonNull(name) ? parent.get(name) : parent.putObject(name);
    }

    /** Adds a second segment to the first leg, a copy of the first under another name. */
    public CaseTree repeatSegment(String ref) {
        ArrayNode segments = (ArrayNode) root.at("/limbs/0/segments");
        segments.add(((ObjectNode) segments.get(0)).deepCopy().put("ref", ref));
        return this;
    }

    /** Paths of every value a case may leave out: all leaves and lists of words but names, sides, veins and levels. */
    public List<String> blankable() {
        List<String> paths = new ArrayList<>();
        collect(root, "", paths);
        List<String> fixed = List.of("format", "caseRef", "side", "ref", "vein", "level", "drug", "percent");
        paths.removeIf(path -> fixed.contains(path.substring(path.lastIndexOf('.') + 1)));
        // a standard deviation is no measurement: without it the usual error of the measurement is taken
        paths.removeIf(path -> path.endsWith("SdMm"));
        // a technique already chosen is a decision of a person: while it is absent, nothing has been chosen
        paths.removeIf(path -> path.endsWith("chosen"));
        return paths;
    }

    private static void collect(JsonNode node, String path, List<String> paths) {
        if (node instanceof ObjectNode object) {
            object.propertyNames().forEach(name -> collect(object.get(name), join(path, name), paths));
        } else if (node instanceof ArrayNode array
                && !array.isEmpty()
                && array.get(0).isObject()) {
            if (path.endsWith("sclerosants")) {
                paths.add(path);
            }
            for (int i = 0; i < array.size(); i++) {
                collect(array.get(i), join(path, Integer.toString(i)), paths);
            }
        } else {
            paths.add(path);
        }
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static byte[] resource(String name) {
        try (var in = CaseTree.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
