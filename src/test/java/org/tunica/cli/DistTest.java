package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Option;

/** What lies beside the jar for those who run it says what the program does. */
class DistTest {
    private static final Path DIST = Path.of("src/main/dist");

    private static Set<String> variables(String text) {
        return Pattern.compile("TUNICA_[A-Z]+")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Every variable the server reads, as its options say. */
    private static Set<String> ofTheServer() {
        return Stream.of(ServeCommand.class.getDeclaredFields())
                .filter(field -> field.isAnnotationPresent(Option.class))
                .flatMap(field -> variables(field.getAnnotation(Option.class).defaultValue()).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Containerfile", "tunica.service"})
    void variablesNamed_areThoseTheServerReads(String file) throws IOException {
        assertEquals(ofTheServer(), variables(Files.readString(DIST.resolve(file))));
    }

    @Test
    void theContainer_isNobodyOfPowerAndTellsItsHealth() throws IOException {
        String said = Files.readString(DIST.resolve("Containerfile"));
        int user = said.indexOf("\nUSER 10001\n");
        assertTrue(user > 0 && user < said.indexOf("\nENTRYPOINT "), "runs as somebody without rights");
        assertTrue(said.contains("/server/health/readiness"));
    }
}
