package org.tunica.replay;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.knowledge.Bundle;

/** The shipped release with a sentence or a number put otherwise, and demo cases to try it on. */
final class Edited {
    static final Tunica SHIPPED = Tunica.shipped();

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
