package org.tunica.web;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.StackTraceElementProxy;
import ch.qos.logback.core.encoder.EncoderBase;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/**
 * Writes the log as JSON, one object a line: {@code at, level, from, thread, says}, and of an exception its kinds and where
 * they arose. What an exception says in words is left out: it may quote what somebody sent. So are the words of libraries,
 * but for the part that does not change.
 */
public final class LogLines extends EncoderBase<ILoggingEvent> {
    private static final String OURS = "org.tunica";
    private static final int MOST_CAUSES = 6;
    private static final int MOST_FRAMES = 12;
    private static final JsonMapper JSON = new JsonMapper();

    /**
     * One line.
     *
     * @param failed kinds of exceptions and where they arose; empty when nothing failed
     */
    record Line(String at, String level, String from, String thread, String says, List<String> failed) {}

    @Override
    public byte[] headerBytes() {
        return new byte[0];
    }

    @Override
    public byte[] footerBytes() {
        return new byte[0];
    }

    @Override
    public byte[] encode(ILoggingEvent event) {
        Line line = new Line(
                event.getInstant().toString(),
                event.getLevel().toString(),
                event.getLoggerName(),
                event.getThreadName(),
                says(event),
                event.getThrowableProxy() == null ? List.of() : trace(event.getThrowableProxy()));
        return (JSON.writeValueAsString(line) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String says(ILoggingEvent event) {
        if (event.getLoggerName().startsWith(OURS)) {
            return event.getFormattedMessage();
        }
        return event.getArgumentArray() == null ? "(words of a library)" : event.getMessage();
    }

    private static List<String> trace(IThrowableProxy failed) {
        List<String> trace = new ArrayList<>();
        int causes = 0;
        for (IThrowableProxy cause = failed; cause != null && causes < MOST_CAUSES; cause = cause.getCause()) {
            trace.add(cause.getClassName());
            Arrays.stream(cause.getStackTraceElementProxyArray())
                    .limit(MOST_FRAMES)
                    .map(StackTraceElementProxy::getSTEAsString)
                    .forEach(trace::add);
            causes++;
        }
        return trace;
    }
}
