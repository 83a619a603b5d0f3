package org.tunica.knowledge;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;

/** The shipped texts with faults planted in memory. */
final class Planted {
    private final Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());

    /** Replaces the first {@code old} of a file; it must be there, or the test would plant nothing. */
    Planted change(String path, String old, String changed) {
        String text = texts.get(path);
        int at = text == null ? -1 : text.indexOf(old);
        if (at < 0) {
            throw new IllegalArgumentException(path + " does not hold \"" + old + "\"");
        }
        texts.put(path, text.substring(0, at) + changed + text.substring(at + old.length()));
        return this;
    }

    Planted add(String path, String text) {
        texts.merge(path, text, String::concat);
        return this;
    }

    Planted replace(String path, String text) {
        texts.put(path, text);
        return this;
    }

    Planted remove(String path) {
        texts.remove(path);
        return this;
    }

    Planted rename(String path, String other) {
        texts.put(other, texts.remove(path));
        return this;
    }

    Bundle bundle() {
        return Bundle.of(texts);
    }

    /** The faults as lines; none when the knowledge loads. */
    List<String> faults() {
        try {
            Knowledge.of(bundle());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }
}
