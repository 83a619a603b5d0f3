package org.tunica.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tunica.plan.Advice;

/** The plan here is written by hand, so that the test does not hang on what the rules of the day choose. */
class FollowUpCommandTest {
    private static final String FOLLOW_UP = "knowledge/demo/follow-up/both-legs-many-segments.json";
    private static final String PLAN = """
            { "format": "tunica-plan/1", "caseRef": "larkspur-11", "sessions": [ { "steps": [
              { "ref": "L1", "side": "left", "vein": "great-saphenous", "level": "thigh", "technique": "laser-1470-radial" },
              { "ref": "L2", "side": "left", "vein": "great-saphenous", "level": "upper-calf", "technique": "foam-polidocanol" },
              { "ref": "R1", "side": "right", "vein": "great-saphenous", "level": "thigh", "technique": "laser-1470-radial" },
              { "ref": "R2", "side": "right", "vein": "small-saphenous", "level": "mid-calf", "technique": "adhesive" } ] } ] }
            """;

    @TempDir
    private Path folder;

    private int code;
    private String out = "";
    private String err = "";

    @Test
    void tellsHowItWent() throws IOException {
        run("followup", plan(), FOLLOW_UP);
        assertEquals(0, code, err);
        assertTrue(out.contains(Advice.CAUTION));
        assertTrue(out.contains("class II (40 % of the deep lumen)"));
        assertTrue(out.contains("duplex every week until it has drawn back [S-0043, unverified]"));
        assertTrue(out.contains("class undefined (50 % of the deep lumen)"));
        assertTrue(out.contains("8 before, 2 on day 80, change -6. No drop is established"));
        assertTrue(out.contains("reopened (8 of 20 cm open); reflux of 1.4 s, which counts"));
        assertTrue(out.contains("no total, for these items are not graded: pigmentation"));
        assertTrue(out.contains("Next scan: about day 13 after the procedure"));
        assertTrue(out.contains("counts as closed, 5 cm [S-0022, unverified]"));
        assertTrue(out.contains("1 of 1 segments scanned (2 followed), by the definition heat open part"), out);
        assertTrue(out.contains("0 of 1 segments scanned (1 followed), by the definition adhesive open stump"), out);
        assertTrue(out.contains("R2, right small saphenous, mid calf: cyanoacrylate adhesive: no follow-up recorded"));
    }

    @Test
    void asJson() throws IOException {
        run("followup", plan(), FOLLOW_UP, "--json");
        assertEquals(0, code, err);
        assertTrue(out.contains("\"format\" : \"tunica-treatment/1\""), out);
        assertTrue(out.contains("\"ceapBefore\" : \"C2,4as,Ep,As(GSVa,GSVb,NSV),Pr\""), out);
    }

    @Test
    void aFaultyFileGivesItsFaults() throws IOException {
        Path faulty = Files.writeString(
                folder.resolve("f.json"),
                Files.readString(Path.of(FOLLOW_UP))
                        .replace("larkspur-11", "larkspur-12")
                        .replace("heat-open", "open"));
        run("followup", plan(), faulty.toString());
        assertEquals(2, code);
        assertTrue(err.contains("$.limbs[1].treated[0].closure"), err);
        assertFalse(err.contains("Exception"), err);
    }

    @Test
    void theSchemaIsPrinted() {
        run("schema", "followup");
        assertEquals(0, code, err);
        assertTrue(out.contains("tunica-followup"));
    }

    private String plan() throws IOException {
        return Files.writeString(folder.resolve("plan.json"), PLAN).toString();
    }

    private void run(String... args) {
        StringWriter written = new StringWriter();
        StringWriter faults = new StringWriter();
        code = Main.run(args, new PrintWriter(written), new PrintWriter(faults));
        out = written.toString().replaceAll("\\s+", " ");
        err = faults.toString();
    }
}
