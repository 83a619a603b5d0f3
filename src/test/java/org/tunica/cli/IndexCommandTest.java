package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.InventedFolder;
import org.tunica.cluster.TestCluster;

/** An index on a search engine that many share, from the command line: a real engine of one node. */
class IndexCommandTest {
    private static final String DEMO = "knowledge/demo/straight-thigh-trunk.json";

    @TempDir
    private Path folder;

    private int code;
    private String out = "";
    private String err = "";

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

    private void run(String... args) {
        StringWriter written = new StringWriter();
        StringWriter faults = new StringWriter();
        code = Main.run(args, new PrintWriter(written), new PrintWriter(faults));
        out = written.toString();
        err = faults.toString();
    }
}
