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

    /** The largest record of a patient read, in bytes: some thousand resources with their printed text. */
    public static final int LARGEST_RECORD_BYTES = 8_000_000;

    private static final Bounds FILE = new Bounds(LARGEST_BYTES, DEEPEST, 10_000);
    private static final Bounds RECORD = new Bounds(LARGEST_RECORD_BYTES, 40, 1_000_000);

    /** What a text may be at most, and the parser that keeps to it. */
    private record Bounds(int largestBytes, JsonFactory factory) {
        Bounds(int largestBytes, int deepest, int longestText) {
            this(largestBytes, JsonText.factory(largestBytes, deepest, longestText));
        }
    }

    private JsonText() {}

    /**
     * The tree of a JSON text in UTF-8.
     *
     * @param what the name of the input, for messages
     * @throws FaultyInput when it is too large, too deep, no JSON, or has a field twice
     */
    public static JsonNode parse(String what, byte[] bytes) {
        return parse(what, bytes, FILE);
    }

    /**
     * The tree of what another system sends about a patient: larger than a file of ours, with texts for people in it.
     *
     * @param what the name of the input, for messages
     * @throws FaultyInput as {@link #parse}
     */
    public static JsonNode parseRecord(String what, byte[] bytes) {
        return parse(what, bytes, RECORD);
    }

    private static JsonNode parse(String what, byte[] bytes, Bounds bounds) {
        if (bytes.length > bounds.largestBytes()) {
            throw fault(what, "is " + bytes.length + " bytes long; at most " + bounds.largestBytes() + " are read");
        }
        try (JsonParser parser = bounds.factory().createParser(ObjectReadContext.empty(), utf8(what, bytes))) {
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

    private static JsonFactory factory(int largestBytes, int deepest, int longestText) {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(deepest)
                        .maxStringLength(longestText)
                        .maxNameLength(200)
                        .maxNumberLength(40)
                        .maxDocumentLength(largestBytes)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
    }
}
