package org.tunica.knowledge;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.TokenTree;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.util.JsonParserDelegate;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** Reads YAML texts into field readers; a key that stands twice is a fault, and nothing in a text can run. */
public final class YamlText {
    /** The deepest nesting read; the glossary needs four. */
    static final int DEEPEST = 12;

    private static final YAMLFactory FACTORY = YAMLFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(20_000)
                    .maxNameLength(200)
                    .maxNumberLength(40)
                    .build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private static final ReadBefore SOUND = new ReadBefore();

    private YamlText() {}

    /**
     * The tree of a YAML text in UTF-8 that stands outside a bundle.
     *
     * @param what the name of the input, for messages
     * @throws FaultyInput when it is too large, no mapping, or nothing a file of ours may hold
     */
    public static JsonNode parse(String what, byte[] bytes) {
        String text = utf8(what, bytes);
        Faults faults = new Faults();
        read(what, text, faults);
        faults.throwIfAny(what);
        return tree(text);
    }

    private static String utf8(String what, byte[] bytes) {
        if (bytes.length > Bundle.LARGEST_FILE_BYTES) {
            throw new FaultyInput(
                    what, List.of(new Fault("$", "is larger than " + Bundle.LARGEST_FILE_BYTES + " bytes")));
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new FaultyInput(what, List.of(new Fault("$", "is not UTF-8 text")));
        }
    }

    /** A reader of the mapping in a file; a faulty text is noted and not readable. */
    static FieldReader read(String file, String text, Faults faults) {
        Optional<JsonNode> sound = SOUND.tree(text).or(() -> soundTree(file, text));
        sound.ifPresent(tree -> SOUND.keep(text, tree));
        return sound.map(tree -> new FieldReader(tree, file + ":", faults)).orElseGet(() -> again(file, text, faults));
    }

    /** The tree of a text without any fault, checked and built in one pass: two would cost a tenth of the start. */
    private static Optional<JsonNode> soundTree(String file, String text) {
        Faults found = new Faults();
        PlainText plain = new PlainText(file, text, found);
        try (CheckedTokens tokens = new CheckedTokens(file, parser(text), plain, found)) {
            plain.lines();
            JsonNode tree = TokenTree.of(tokens);
            return found.count() == 0 ? Optional.of(tree) : Optional.empty();
        } catch (JacksonException | FaultyInput e) {
            return Optional.empty(); // read again to say what is wrong, and everything that is
        }
    }

    private static FieldReader again(String file, String text, Faults faults) {
        int before = faults.count();
        PlainText plain = new PlainText(file, text, faults);
        plain.lines();
        try {
            scan(file, text, plain, faults);
            if (faults.count() == before) {
                return new FieldReader(tree(text), file + ":", faults);
            }
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? -1 : e.getLocation().getLineNr();
            faults.add(
                    file + (line > 0 ? ":" + line : ""), "is not readable YAML: " + firstLine(e.getOriginalMessage()));
        }
        return FieldReader.ofUnreadable(file + ":", faults);
    }

    private static JsonNode tree(String text) {
        try (JsonParser parser = parser(text)) {
            return TokenTree.of(parser);
        }
    }

    private static JsonParser parser(String text) {
        return FACTORY.createParser(ObjectReadContext.empty(), text);
    }

    /** The whole text once, also what stands after the first document: a tree would show neither tags nor spelling. */
    private static void scan(String file, String text, PlainText plain, Faults faults) {
        try (JsonParser parser = parser(text)) {
            YamlTokens tokens = new YamlTokens(file, parser, plain, faults);
            while (parser.nextToken() != null && tokens.goesOn()) {
                tokens.check();
            }
        }
    }

    /** The parser's message without the name of the Java method that would lift a limit. */
    private static String firstLine(String message) {
        return message.lines().findFirst().orElse(message).replaceAll("[,(]? ?from `[^`]*`", "");
    }

    /** Checks each token as the tree is built from it. */
    private static final class CheckedTokens extends JsonParserDelegate {
        private final YamlTokens tokens;

        CheckedTokens(String file, JsonParser parser, PlainText plain, Faults faults) {
            super(parser);
            this.tokens = new YamlTokens(file, parser, plain, faults);
        }

        @Override
        public JsonToken nextToken() {
            JsonToken token = super.nextToken();
            if (token != null) {
                tokens.check();
            }
            return token;
        }
    }
}
