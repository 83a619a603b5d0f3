package org.tunica.releases;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The program that runs.
 *
 * @param version as its jar tells it
 * @param parts the list of its parts, CycloneDX; empty when it runs from its source
 */
public record Program(String version, Optional<String> parts) {
    private static final String FROM_SOURCE = "source";
    private static final String PARTS = "/META-INF/sbom/application.cdx.json";

    /** This one. */
    public static Program running() {
        @Nullable String version = Program.class.getPackage().getImplementationVersion();
        return new Program(version == null ? FROM_SOURCE : version, read());
    }

    private static Optional<String> read() {
        try (InputStream in = Program.class.getResourceAsStream(PARTS)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
