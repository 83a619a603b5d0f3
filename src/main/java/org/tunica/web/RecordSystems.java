package org.tunica.web;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.tunica.callers.Caller;
import org.tunica.callers.CallerReader;
import org.tunica.casefile.FieldReader;
import org.tunica.casefile.Word;

/**
 * What a site says of the record systems that call.
 *
 * @param site the file that says what the room holds and how records are written; without it no service is offered
 * @param baseAddress by which callers know this server; a token must name it and the path called
 * @param calls whether calls must be signed
 * @param callers who may call
 * @param origins pages in browsers that may call
 * @param answerWithin when the answer to a hook must go out, whole or not
 * @param recordWithin the same for an operation on a record
 * @param clockSkew how far the clocks of two machines may differ
 * @param longestTokenLife from the making of a token to its end
 */
public record RecordSystems(
        Optional<String> site,
        String baseAddress,
        Calls calls,
        List<Caller> callers,
        List<String> origins,
        Duration answerWithin,
        Duration recordWithin,
        Duration clockSkew,
        Duration longestTokenLife) {
    private static final String ORIGIN = "https?://[A-Za-z0-9.-]+(:\\d{1,5})?";
    private static final int MOST_SECONDS = 300;
    private static final int MOST_MINUTES = 60;
    private static final int MOST_MS = 10_000;

    /** No record system may call. */
    public static final RecordSystems NONE = new RecordSystems(
            Optional.empty(),
            "http://127.0.0.1:8080",
            Calls.SIGNED,
            List.of(),
            List.of(),
            Duration.ofMillis(400),
            Duration.ofSeconds(5),
            Duration.ofSeconds(60),
            Duration.ofMinutes(MOST_MINUTES));

    public RecordSystems {
        callers = List.copyOf(callers);
        origins = List.copyOf(origins);
    }

    /** Whether calls must be signed. */
    public enum Calls implements Word {
        SIGNED,
        /** Whoever reaches the server may call; on loopback alone, and for tests alone. */
        UNSIGNED_FOR_TESTS
    }

    static RecordSystems read(FieldReader reader) {
        Optional<String> base = reader.text("baseAddress");
        base.filter(address -> !isBase(address))
                .ifPresent(address -> reader.fault(
                        "baseAddress", "must be a web address without path and without a slash at its end"));
        List<Caller> callers = CallerReader.read(reader, "callers");
        if (!callers.isEmpty() && base.isEmpty()) {
            reader.fault("baseAddress", "must be given where callers are: their tokens name it");
        }
        List<String> origins = reader.texts("origins");
        origins.stream()
                .filter(origin -> !origin.matches(ORIGIN))
                .forEach(origin -> reader.fault("origins", "\"" + origin + "\" is no origin; one is https://host"));
        return new RecordSystems(
                reader.text("site"),
                base.orElse(NONE.baseAddress),
                reader.word("calls", Calls.class).orElse(NONE.calls),
                callers,
                origins,
                WholeNumber.read(reader, "answerWithinMs", 1, MOST_MS)
                        .map(Duration::ofMillis)
                        .orElse(NONE.answerWithin),
                WholeNumber.read(reader, "recordWithinMs", 1, MOST_MS)
                        .map(Duration::ofMillis)
                        .orElse(NONE.recordWithin),
                WholeNumber.read(reader, "clockSkewSeconds", 0, MOST_SECONDS)
                        .map(Duration::ofSeconds)
                        .orElse(NONE.clockSkew),
                WholeNumber.read(reader, "longestTokenLifeMinutes", 1, MOST_MINUTES)
                        .map(Duration::ofMinutes)
                        .orElse(NONE.longestTokenLife));
    }

    private static boolean isBase(String address) {
        try {
            URI uri = new URI(address);
            return address.matches(ORIGIN) && uri.getHost() != null;
        } catch (URISyntaxException e) {
            return false;
        }
    }
}
