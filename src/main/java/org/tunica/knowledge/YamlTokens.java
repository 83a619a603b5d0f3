package org.tunica.knowledge;

import org.tunica.casefile.Faults;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Holds one YAML file to plain YAML: mappings, lists, texts and numbers. No tag, alias or second
 * document: a reader would have to know what they do, and some programs make them do more than say.
 */
final class YamlTokens {
    /** The most values (keys are not counted) in one file; the largest file shipped has about a thousand. */
    static final int MOST_VALUES = 20_000;

    private final String file;
    private final JsonParser parser;
    private final PlainText plain;
    private final Faults faults;

    private int values;
    private int depth;
    private int documents;

    YamlTokens(String file, JsonParser parser, PlainText plain, Faults faults) {
        this.file = file;
        this.parser = parser;
        this.plain = plain;
        this.faults = faults;
    }

    /** Whether there is reason to read on: not after a second document or too many values. */
    boolean goesOn() {
        return documents <= 1 && values <= MOST_VALUES;
    }

    /** Notes what is wrong with the token the parser stands at. */
    void check() {
        JsonToken token = parser.currentToken();
        count(token);
        if (parser.getTypeId() != null) {
            fault("the tag \"" + parser.getTypeId() + "\" is not read; write the plain value");
        }
        if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
            fault("the alias \"*" + parser.getString() + "\" is not read; write the value out");
        }
        if (token == JsonToken.PROPERTY_NAME) {
            plain.name(this::place, parser.currentName());
        } else if (token == JsonToken.VALUE_STRING) {
            plain.value(this::place, parser.getString());
        }
    }

    private void count(JsonToken token) {
        if (depth == 0 && ++documents > 1) {
            fault("a second document starts here; a file holds one");
        }
        if (token.isStructStart()) {
            depth++;
        } else if (token.isStructEnd()) {
            depth--;
        }
        if (token != JsonToken.PROPERTY_NAME && !token.isStructEnd() && ++values > MOST_VALUES) {
            fault("there are more than " + MOST_VALUES + " values in the file");
        }
    }

    private String place() {
        return file + ":" + parser.currentTokenLocation().getLineNr();
    }

    private void fault(String says) {
        faults.add(place(), says);
    }
}
