package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.InventedFolder;
import org.tunica.ServerKeys;
import org.tunica.cluster.EngineAddress;
import org.tunica.cluster.Gate;
import org.tunica.cluster.TestCluster;

/** An index on a search engine that many share, from the command line: a real engine of one node. */
class IndexCommandTest extends AtTheCommandLine {
    private static final String DEMO = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    private Path folder;

    @Test
    void documentationExample_theSameIsFoundThere() throws IOException {
        InventedFolder.write(folder, 40);
        String cases = folder.toString();
        try (TestCluster nodes = TestCluster.of(1)) {
            String url = nodes.address().nodes().get(0).toString();
            run("similar", DEMO, "--index", url);
            assertEquals(2, code);
            assertTrue(err.contains("\"index rebuild\" loads one"), err);

            run("index", "rebuild", "--to", url, "--cases", cases, "--copies", "0");
            assertEquals(0, code, err);
            assertTrue(out.contains(" of 40 cases are loaded and in use"), out);
            run("index", "verify", "--to", url, "--cases", cases);
            assertEquals(0, code, err);
            assertTrue(out.endsWith("The index holds.\n"), out);
            run("index", "verify", "--to", url);
            assertEquals(2, code);
            assertTrue(out.contains("missing: ") && out.contains("Load it anew"), out);

            run("similar", DEMO, "--why", "--cases", cases);
            String beside = out;
            run("similar", DEMO, "--why", "--index", url);
            assertEquals(beside, out, err);
        }
    }

    /** In a process of its own, as whom to trust is told to a Java process when it starts. */
    @Test
    void engineBehindTlsAndPassword_isAskedAsWhoTheEnvironmentSays() throws Exception {
        ServerKeys keys = ServerKeys.make(folder);
        Path trusted = keys.trustStore(folder);
        Path base = Files.createDirectory(folder.resolve("cases"));
        InventedFolder.write(base, 20);
        String cases = base.toString();
        try (TestCluster nodes = TestCluster.of(1);
                Gate gate = new Gate(nodes.address().nodes().get(0), keys)) {
            String[] rebuild = {"index", "rebuild", "--to", gate.address(), "--cases", cases, "--copies", "0"};
            run(rebuild);
            assertEquals(1, code, "nobody said that this key is to be trusted");
            assertTrue(err.contains("The search engine does not answer") && err.contains("certification"), err);
            elsewhere(trusted, "guessed", rebuild);
            assertEquals(1, code);
            assertTrue(err.contains("status 401"), err);
            assertFalse(err.contains("guessed"), err);
            elsewhere(trusted, Gate.PASSWORD, rebuild);
            assertEquals(0, code, err);
            run("index", "verify", "--to", nodes.address().nodes().get(0).toString(), "--cases", cases);
            assertEquals(0, code, err);
            run("similar", DEMO, "--cases", cases);
            String beside = out;
            elsewhere(trusted, Gate.PASSWORD, "similar", DEMO, "--index", gate.address());
            assertEquals(beside, out, err);
        }
    }

    private void elsewhere(Path trusted, String password, String... args) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djavax.net.ssl.trustStore=" + trusted,
                "-Djavax.net.ssl.trustStorePassword=" + ServerKeys.PASSWORD,
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(args));
        Path errors = folder.resolve("err");
        ProcessBuilder program = new ProcessBuilder(command).redirectError(errors.toFile());
        program.environment().put(EngineAddress.USER, Gate.USER);
        program.environment().put(EngineAddress.PASSWORD, password);
        Process process = program.start();
        out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        code = process.waitFor();
        err = Files.readString(errors);
    }

    @Test
    void whatCannotBe_isSaid() {
        run("similar", DEMO, "--index", "http://127.0.0.1:9");
        assertEquals(1, code);
        assertTrue(err.contains("The search engine does not answer"), err);
        run("similar", DEMO, "--index", "http://10.1.2.3:9200");
        assertEquals(2, code);
        assertTrue(err.contains("would cross the network in the clear"), err);
        run("similar", DEMO, "--index", "http://127.0.0.1:9", "--cases", folder.toString());
        assertEquals(2, code);
        assertTrue(err.contains("not both"), err);
    }
}
