package org.tunica.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Bundle;

/** The shipped release with a sentence or a number put otherwise, and demo cases to try it on. */
final class Edited {
    static final Tunica SHIPPED = Tunica.shipped();

    private static final Pattern NUMBER = Pattern.compile("((?:value|low|typical|high): )(-?[0-9.]+)");

    private final Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());

    private Edited() {}

    static Edited release() {
        return new Edited();
    }

    /** Puts one text for another, which must be there. */
    Edited with(String path, String before, String after) {
        String text = texts.get(path);
        if (!text.contains(before)) {
            throw new AssertionError(path + " does not say: " + before);
        }
        texts.put(path, text.replace(before, after));
        return this;
    }

    /** The same with another number under an id. */
    Edited withValue(String path, String id, String value) {
        String text = texts.get(path);
        String changed = text.replaceFirst("(?m)^(" + id + ":\\n(?:  .*\\n)*?  value: )\\S+$", "$1" + value);
        if (changed.equals(text)) {
            throw new AssertionError(path + " has no other value under " + id);
        }
        texts.put(path, changed);
        return this;
    }

    /** The same with a number and the ends of its range times a factor; every id stands in one file. */
    Edited scaled(String id, double factor) {
        Matcher block = Pattern.compile("(?m)^" + Pattern.quote(id) + ":\\s*(\\{.*|\\n(?:  .*\\n)*)")
                .matcher("");
        for (Map.Entry<String, String> text : texts.entrySet()) {
            block.reset(text.getValue());
            if (text.getKey().endsWith(".yaml") && text.getKey().startsWith("knowledge/") && block.find()) {
                String scaled = NUMBER.matcher(block.group())
                        .replaceAll(found -> found.group(1) + Double.parseDouble(found.group(2)) * factor);
                text.setValue(text.getValue().substring(0, block.start())
                        + scaled
                        + text.getValue().substring(block.end()));
                return this;
            }
        }
        throw new AssertionError("no number " + id);
    }

    Bundle bundle() {
        return Bundle.of(texts);
    }

    Tunica tunica() {
        return Tunica.of(bundle());
    }

    static CaseFile demo(String name) {
        try {
            return SHIPPED.readCase(name, Files.readAllBytes(Path.of("knowledge/demo", name + ".json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
