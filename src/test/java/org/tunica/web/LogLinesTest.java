package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.LoggingEvent;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A log that cannot quote what was sent, whatever a library or an exception says. */
class LogLinesTest {
    private static final String SECRET = "Ottilie Vogelsang";

    private final LoggerContext context = new LoggerContext();

    @Test
    void exception_isToldWithoutItsWords() {
        Exception failed = new IllegalStateException(SECRET, new RuntimeException("caused by " + SECRET));
        JsonNode line = written("org.tunica.web.Problems", "request failed, number {}", failed, "n-1");
        assertEquals("request failed, number n-1", line.get("says").stringValue());
        assertEquals(
                "java.lang.IllegalStateException", line.get("failed").get(0).stringValue());
        assertTrue(line.get("failed").toString().contains("LogLinesTest.exception_isToldWithoutItsWords"));
        assertTrue(line.get("failed").toString().contains("java.lang.RuntimeException"));
        assertFalse(line.toString().contains(SECRET), line::toString);
    }

    @Test
    void library_isToldByItsFixedWordsAlone() {
        JsonNode filled = written("org.example.Library", "cannot read {}", null, SECRET);
        assertEquals("cannot read {}", filled.get("says").stringValue());
        assertFalse(written("org.example.Library", "cannot read " + SECRET, null)
                .toString()
                .contains(SECRET));
    }

    @Test
    void lineBreaks_makeNoSecondLine() {
        LoggingEvent event = event("org.tunica.web.Problems", "one\n{\"level\":\"ERROR\"}", null);
        String line = new String(new LogLines().encode(event), StandardCharsets.UTF_8);
        assertEquals(line.length() - 1, line.indexOf('\n'), line);
    }

    private JsonNode written(String from, String says, @Nullable Throwable failed, Object... words) {
        return new JsonMapper().readTree(new LogLines().encode(event(from, says, failed, words)));
    }

    private LoggingEvent event(String from, String says, @Nullable Throwable failed, Object... words) {
        Logger logger = context.getLogger(from);
        return new LoggingEvent(from, logger, Level.ERROR, says, failed, words.length == 0 ? null : words);
    }
}
