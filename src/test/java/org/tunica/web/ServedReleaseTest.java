package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.plan.Advice;
import org.tunica.releases.TwoReleases;

/** A server in a process of its own over a place with releases. */
class ServedReleaseTest {
    @TempDir
    private Path folder;

    @Test
    void aRollback_isServedFromThenOnAtTheSameAddress() throws IOException {
        String data = folder.resolve("data").toString();
        TwoReleases.inForce(data);
        Process process = serve(data);
        try {
            BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
            List<String> first = said(out);
            assertTrue(first.contains("Release 1.1.0 is in force."), first::toString);
            TwoReleases.rollBack(data);
            List<String> second = said(out);
            assertTrue(second.contains("Release 1.0.0 is in force."), second::toString);
            assertEquals(first.get(0), second.get(0), "the address stays");
        } finally {
            process.destroyForcibly();
        }
    }

    private Process serve(String data) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Djava.io.tmpdir=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.tunica.cli.Main",
                        "serve",
                        "--port",
                        "0",
                        "--empty",
                        "--data",
                        data)
                .redirectError(folder.resolve("log").toFile())
                .start();
    }

    /** What it says up to the caution, which comes last. */
    private static List<String> said(BufferedReader out) throws IOException {
        List<String> said = new ArrayList<>();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            said.add(line);
            if (line.equals(Advice.CAUTION)) {
                return said;
            }
        }
        return said;
    }
}
