package org.tunica.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonTextTest {
    @Test
    void parse_givesTheTree() {
        assertEquals(
                7, JsonText.parse("case", utf8("{ \"a\": [7] }")).at("/a/0").intValue());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    { "a": 1, "a": 2 }   | at line 1, column 14: Duplicate Object property "a"
                    { "a": 1 } { }       | at line 1, column 12: Trailing token
                    { "a": 1, }          | at line 1, column 11
                    { "a": NaN }         | at line 1, column 11: Non-standard token 'NaN'
                    { "a": Infinity }    | Non-standard token 'Infinity'
                    { "a": 01 }          | Leading zeroes not allowed
                    { 'a': 1 }           | at line 1, column 3
                    { "a": 1             | at line 1, column
                    hello                | Unrecognized token 'hello'
                    // remark            | at line 1, column 1
                    """)
    void parse_notJson_saysWhere(String json, String says) {
        String message = fault(utf8(json));
        assertTrue(message.startsWith("$: is not readable JSON at line "), message);
        assertTrue(message.contains(says), message);
    }

    @Test
    void parse_empty() {
        assertEquals("$: is empty", fault(utf8("")));
        assertEquals("$: is empty", fault(utf8(" \n")));
    }

    @Test
    void parse_notUtf8() {
        assertEquals("$: is not UTF-8 text", fault(new byte[] {'{', '"', (byte) 0xff, '"', ':', '1', '}'}));
    }

    @Test
    void parse_byteOrderMark_isPassedOver() {
        assertTrue(JsonText.parse("case", utf8("\uFEFF{}")).isObject());
    }

    @Test
    void parse_anotherEncoding() {
        fault("{ \"a\": 1 }".getBytes(StandardCharsets.UTF_16BE));
        fault("{ \"a\": 1 }".getBytes(StandardCharsets.UTF_16LE));
        fault(new byte[] {0, 0, 0, '{', 0, 0, 0, '}'});
    }

    @Test
    void parse_largestAndOneByteMore() {
        assertTrue(JsonText.parse("case", padded(JsonText.LARGEST_BYTES)).isObject());
        assertEquals("$: is 1000001 bytes long; at most 1000000 are read", fault(padded(JsonText.LARGEST_BYTES + 1)));
    }

    @Test
    void parse_deepestAndOneDeeper() {
        assertTrue(JsonText.parse("case", nested(JsonText.DEEPEST)).isArray());
        String message = fault(nested(JsonText.DEEPEST + 1));
        assertTrue(message.contains("nesting depth (21) exceeds the maximum allowed (20)"), message);
    }

    @ParameterizedTest
    @ValueSource(ints = {41, 400_000})
    void parse_numberTooLong(int digits) {
        String message = fault(utf8("[" + "9".repeat(digits) + "]"));
        assertTrue(message.contains("exceeds the maximum allowed"), message);
        assertFalse(message.contains("StreamReadConstraints"), message);
    }

    @Test
    void parse_overflow_isLeftToTheReaderOfTheField() {
        Faults faults = new Faults();
        new FieldReader(JsonText.parse("case", utf8("{ \"a\": 1e999, \"b\": -1e999 }")), "$", faults).number("a");
        assertEquals(List.of(new Fault("$.a", "must be a finite number")), faults.list());
    }

    private static String fault(byte[] json) {
        FaultyInput faulty = assertThrows(FaultyInput.class, () -> JsonText.parse("case", json));
        assertEquals("case", faulty.what());
        assertEquals(1, faulty.faults().size());
        return faulty.faults().get(0).toString();
    }

    private static byte[] padded(int length) {
        return utf8("{}" + " ".repeat(length - 2));
    }

    private static byte[] nested(int depth) {
        return utf8("[".repeat(depth) + "]".repeat(depth));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
