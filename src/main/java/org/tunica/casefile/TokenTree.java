package org.tunica.casefile;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Builds the tree of a JSON or YAML text from the tokens of its parser, which holds the limits on size and depth.
 *
 * <p>The mapper of the library would do it too, but takes a quarter of the program's start to set itself up.
 */
public final class TokenTree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;

    private TokenTree(JsonParser parser) {
        this.parser = parser;
    }

    /**
     * The one tree of a text; a missing node when the text is empty.
     *
     * @throws tools.jackson.core.JacksonException when it is not readable or goes on after its tree
     */
    public static JsonNode of(JsonParser parser) {
        if (parser.nextToken() == null) {
            return NODES.missingNode();
        }
        JsonNode tree = new TokenTree(parser).value();
        if (parser.nextToken() != null) {
            throw new StreamReadException(
                    parser, "Trailing token " + parser.currentToken(), parser.currentTokenLocation());
        }
        return tree;
    }

    private JsonNode value() {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> NODES.stringNode(parser.getString());
            case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            default -> throw new StreamReadException(parser, "no value is written as " + parser.currentToken());
        };
    }

    private ObjectNode object() {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            object.set(name, value());
        }
        return object;
    }

    private ArrayNode array() {
        ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value());
        }
        return array;
    }
}
