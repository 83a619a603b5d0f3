package org.tunica.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tunica.casefile.Fault;
import org.tunica.casefile.Faults;

/** A file of knowledge is plain YAML, and each departure from it is named by its line. */
class YamlTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"0", "5", "-5", "0.25", "1e3", "1.5E-3", "120", "1e308"})
    void aNumberInPlainDecimals_isTheNumberItShows(String number) {
        Faults faults = new Faults();
        assertEquals(
                Double.parseDouble(number),
                YamlText.read("a.yaml", "value: " + number, faults).requiredNumber("value"));
        assertEquals(List.of(), faults.list());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "value: !!java.net.URL [x] | the tag \"tag:yaml.org,2002:java.net.URL\" is not read",
                "value: !!str 5 | the tag \"tag:yaml.org,2002:str\" is not read",
                "value: !here 5 | the tag \"here\" is not read",
                "value: *a | the alias \"*a\" is not read",
                "value: \"\\x1b[2J\" | in a value, character 1 is U+001B",
                "value: \"5\\nforged\" | in a value, character 2 is U+000A",
                "value: \"a\\u202e\" | in a value, character 2 is U+202E",
                "\"v\\u200blue\": 5 | in a name, character 2 is U+200B",
            })
    void anythingElse_isRefusedWithItsLine(String line, String says) {
        List<String> faults = faults("first: 1\n" + line + "\n");
        assertTrue(faults.stream().anyMatch(fault -> fault.startsWith("a.yaml:2: " + says)), faults::toString);
    }

    @ParameterizedTest
    @ValueSource(strings = {"010", "0x1F", "0o17", "1_000", "+5", ".5", "1:30", "1e9999", "Infinity"})
    void aNumberSpelledInAWayThatPeopleAndProgramsReadDifferently_isNoNumber(String number) {
        Faults faults = new Faults();
        YamlText.read("a.yaml", "value: " + number, faults).number("value");
        assertTrue(faults.list().get(0).says().matches("must be a (finite )?number.*"), faults.list()::toString);
    }

    @Test
    void aliases_areRefused_notReadAsTheirName() {
        assertEquals(
                List.of("a.yaml:2: the alias \"*x\" is not read; write the value out"),
                faults("first: &x 1\nvalue: *x\n"));
    }

    @Test
    void aSecondDocument_isRefused_notPassedOver() {
        assertEquals(
                List.of("a.yaml:3: a second document starts here; a file holds one"),
                faults("first: 1\n---\nvalue: 2\n"));
    }

    @Test
    void mostValuesAndOneMore() {
        String most = "a: [" + "1, ".repeat(YamlTokens.MOST_VALUES - 3) + "1]";
        assertEquals(List.of(), faults(most));
        assertEquals(
                List.of("a.yaml:1: there are more than 20000 values in the file"), faults(most.replace("[", "[1, ")));
    }

    @Test
    void theRawLines_includingComments_holdOnlyWhatCanBeSeen() {
        List<String> faults = faults("# \u202e reversed\nfirst: \u0430\ncites: \"V\u00e4h\u00e4aho\"\n# tab\there\n");
        assertEquals(3, faults.size(), faults::toString);
        assertTrue(faults.get(0).startsWith("a.yaml:1: column 3 is U+202E"), faults::toString);
        assertTrue(faults.get(1).startsWith("a.yaml:2: column 8 is U+0430"), faults::toString);
        assertTrue(faults.get(2).startsWith("a.yaml:4: column 6 is U+0009"), faults::toString);
    }

    private static List<String> faults(String text) {
        Faults faults = new Faults();
        YamlText.read("a.yaml", text, faults);
        return faults.list().stream().map(Fault::toString).toList();
    }
}
