package org.tunica.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** The demo bench file is what the model makes: after a change of the model run {@link BenchDemo} and read the diff. */
class BenchDemoTest {
    @Test
    void demoFile_isWhatTheModelMakes() throws IOException {
        assertEquals(BenchDemo.text(), Files.readString(BenchDemo.FILE));
    }
}
