package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.casefile.PlausibleRange;
import org.tunica.treatment.FollowUp;

/** The schema of a follow-up and its reader tell the same story. */
class FollowUpSchemaTest {
    private static final Tunica TUNICA = Tunica.shipped();
    /** What a schema cannot see: things that hold between values, and the inside of a notation. */
    private static final Pattern ONLY_THE_READER_SEES =
            Pattern.compile("\\$.*\\.(ceap|ceapBefore): (?!must be a text).*"
                    + "|.*(no more can be open than was treated|cannot reflux|into-deep-vein only|fills some of it"
                    + "|must be later than the visit before it, on day -?\\d+|stands twice in the (visit|follow-up)"
                    + "|put its segments together|one scale says death and the other does not)"
                    + "|\\$.*visits\\[\\d+\\].*\\.ref: .* is not a known word.*");

    private static final SchemaAgreement AGREEMENT = new SchemaAgreement(
            SchemaAgreement.schema(TUNICA.schema(Contract.FOLLOWUP)),
            FollowUpSchemaTest::faults,
            fault -> ONLY_THE_READER_SEES.matcher(fault).matches());

    @Test
    void itIsASchema() {
        SchemaAgreement.isASchema(TUNICA.schema(Contract.FOLLOWUP));
    }

    @Test
    void theDemoKeepsToIt() {
        assertEquals(List.of(), faults(demo()));
        assertEquals(List.of(), SchemaAgreement.errors(AGREEMENT.schema(), demo()));
    }

    @Test
    void oneChange_schemaAndReaderAgree() {
        AGREEMENT.holdsAfterOneChange(demo(), 500);
    }

    @Test
    void theEdgesOfEveryNumber() {
        for (String number : FollowUp.NUMBERS) {
            PlausibleRange range = TUNICA.knowledge().plausibleRange(number).orElseThrow();
            String path = number.equals("followup.vcss")
                    ? "limbs.0.vcssBefore.pain"
                    : number.replace("followup.limbs.", "limbs.0.")
                            .replace("treated.", "treated.0.")
                            .replace("visits.", "visits.0.")
                            .replace("segments.", "segments.0.");
            for (double value : new double[] {range.min(), range.max(), range.min() - 1, range.max() + 1}) {
                AGREEMENT.holds(demo().set(path, value));
            }
            assertTrue(!faults(demo().set(path, range.max() + 1)).isEmpty(), number);
            assertTrue(!faults(demo().set(path, range.min() - 1)).isEmpty(), number);
        }
    }

    @Test
    void everyFaultAtOnce() {
        CaseTree tree = demo().set("caseRef", "two words")
                .set("limbs.0.side", "middle")
                .set("limbs.0.ceapBefore", "C9,Ex")
                .set("limbs.0.vcssBefore.pain", 4)
                .set("limbs.0.visits.0.painOfTen", 11)
                .set("limbs.0.visits.0.segments.0.clot", "small")
                .set("limbs.0.visits.0.segments.0.again", "lazer");
        assertTrue(faults(tree).size() >= 8, () -> faults(tree).toString());
    }

    private static List<String> faults(CaseTree tree) {
        try {
            FollowUp.read("follow-up", tree.bytes(), TUNICA.knowledge());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }

    private static CaseTree demo() {
        try {
            return CaseTree.of(Files.readAllBytes(Path.of("knowledge/demo/follow-up/both-legs-many-segments.json")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
