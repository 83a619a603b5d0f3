package org.tunica.casefile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;

/** Turns the bytes of a JSON file into a tree, within limits on size and depth, refusing repeated fields. */
public final class JsonText {
    /** The largest file read, in bytes: a case with both legs mapped needs about 20 KB. */
    public static final int LARGEST_BYTES = 1_000_000;

    /** The deepest nesting read; a case needs seven. */
    public static final int DEEPEST = 20;

    private static final JsonFactory FACTORY = factory();

    private JsonText() {}

    /**
     * The tree of a JSON text in UTF-8.
     *
     * @param what the name of the input, for messages
     * @throws FaultyInput when it is too large, too deep, no JSON, or has a field twice
     */
    public static JsonNode parse(String what, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            throw fault(what, "is " + bytes.length + " bytes long; at most " + LARGEST_BYTES + " are read");
        }
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), utf8(what, bytes))) {
            JsonNode tree = TokenTree.of(parser);
            if (tree.isMissingNode()) {
                throw fault(what, "is empty");
            }
            return tree;
        } catch (JacksonException e) {
            throw fault(what, "is not readable JSON" + where(e) + ": " + plain(e.getOriginalMessage()));
        }
    }

    /** The text; the parser itself would guess at other encodings. A byte order mark is passed over. */
    private static String utf8(String what, byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw fault(what, "is not UTF-8 text");
        }
    }

    /** The parser's message without the name of the Java method that would lift a limit. */
    private static String plain(String message) {
        return message.replaceAll("[,(]? ?from `[^`]*`", "");
    }

    private static String where(JacksonException e) {
        return e.getLocation() == null || e.getLocation().getLineNr() < 0
                ? ""
                : " at line " + e.getLocation().getLineNr() + ", column "
                        + e.getLocation().getColumnNr();
    }

    private static FaultyInput fault(String what, String says) {
        return new FaultyInput(what, List.of(new Fault("$", says)));
    }

    private static JsonFactory factory() {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxStringLength(10_000)
                        .maxNameLength(200)
                        .maxNumberLength(40)
                        .maxDocumentLength(LARGEST_BYTES)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }
}
