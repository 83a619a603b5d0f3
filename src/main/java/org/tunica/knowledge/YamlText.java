package org.tunica.knowledge;

import org.tunica.casefile.Faults;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.TokenTree;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Reads YAML texts into field readers; a key that stands twice is a fault, and nothing in a text can run. */
final class YamlText {
    private static final YAMLFactory FACTORY = YAMLFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(12)
                    .maxStringLength(20_000)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private YamlText() {}

    /** A reader of the mapping in a file; a faulty text is noted and not readable. */
    static FieldReader read(String file, String text, Faults faults) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            return new FieldReader(TokenTree.of(parser), file + ":", faults);
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? -1 : e.getLocation().getLineNr();
            faults.add(
                    file + (line > 0 ? ":" + line : ""), "is not readable YAML: " + firstLine(e.getOriginalMessage()));
            return FieldReader.ofUnreadable(file + ":", faults);
        }
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse(message);
    }
}
