package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tunica.casefile.Fault;
import org.tunica.casefile.FaultyInput;
import org.tunica.pastcases.PastCase;
import tools.jackson.databind.json.JsonMapper;

/** The schema of a past case and its reader tell the same story. */
class PastCaseSchemaTest {
    private static final Tunica TUNICA = Tunica.shipped();

    /** What holds between values, the inside of a notation, and what the words of a note give away. */
    private static final Pattern ONLY_THE_READER_SEES = Pattern.compile(".*("
            + "must be the id of the past case.*|holds what the anonymiser would take out.*"
            + "|the straight part cannot be longer than lengthCm|the wall cannot be thicker than the open lumen is wide"
            + "|a relaxed vein cannot be narrower than the same vein in spasm|stands twice.*|put its segments together"
            + "|does not go with sex male.*|is true, while patient.conditions does not list.*"
            + "|% is accepted|says nothing without power or pullback.*|does not go with the technique.*"
            + "|says that nothing was done.*|must be given, or notDone.*|more cannot be closed.*"
            + "|\\]\\.lengthCm: must be given"
            + "|no more can be open than was treated|cannot reflux|into-deep-vein only|fills some of it"
            + "|must be later than the visit before it.*|one scale says death and the other does not"
            + "|visits\\[\\d+\\].*\\.ref: .* is not a known word.*)"
            + "|\\$.*\\.(ceap|ceapBefore): (?!must be a text).*");

    private static final SchemaAgreement AGREEMENT = new SchemaAgreement(
            SchemaAgreement.schema(TUNICA.schema(Contract.PAST)),
            PastCaseSchemaTest::faults,
            fault -> ONLY_THE_READER_SEES.matcher(fault).matches());

    @Test
    void itIsASchema() {
        SchemaAgreement.isASchema(TUNICA.schema(Contract.PAST));
    }

    @Test
    void madeUpCasesKeepToIt() {
        TUNICA.pastCases()
                .inventedLibrary(11)
                .cases(300)
                .forEach(one -> assertEquals(List.of(), SchemaAgreement.errors(AGREEMENT.schema(), tree(one))));
    }

    @Test
    void oneChange_schemaAndReaderAgree() {
        agreeAfterOneChange(List.of("\"stretches\""));
    }

    /** Of cases that between them hold heat, foam, two legs, a clot and complications. */
    @Tag("deep")
    @Test
    void oneChangeOfManyCases_schemaAndReaderAgree() {
        agreeAfterOneChange(List.of("\"leedJPerCm\"", "\"deepLumenPercent\"", "\"aliquots\""));
    }

    private static void agreeAfterOneChange(List<String> held) {
        List<PastCase> cases = TUNICA.pastCases().inventedLibrary(11).cases(400).toList();
        for (String holds : held) {
            PastCase one = cases.stream()
                    .filter(each -> TUNICA.pastCases().toLine(each).contains(holds))
                    .findFirst()
                    .orElseThrow();
            AGREEMENT.holdsAfterOneChange(tree(one), 900);
        }
    }

    /** What could name someone has no place in it, whatever stands there. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    caseFile.patient.ageYears               | 61
                    caseFile.patient.weightKg               | 74
                    caseFile.patient.heightCm               | 166
                    caseFile.room.costClasses               | {"low": ["adhesive"]}
                    delivered.0.date                        | "2024-03-02"
                    delivered.0.people                      | []
                    delivered.0.indication                  | "pain"
                    delivered.0.aftercare.compression       | "stocking"
                    delivered.0.segments.0.incidentNote     | "slipped"
                    """)
    void couldName(String path, String value) {
        CaseTree tree = tree(TUNICA.pastCases().inventedLibrary(11).at(0)).set(path, new JsonMapper().readTree(value));
        assertFalse(SchemaAgreement.errors(AGREEMENT.schema(), tree).isEmpty());
        assertFalse(faults(tree).isEmpty());
    }

    /** The lines that show the format are those the generator makes today. */
    @Test
    void demo_isWhatTheGeneratorMakes() throws Exception {
        String made = TUNICA.pastCases()
                .inventedLibrary(1)
                .cases(40)
                .map(one -> TUNICA.pastCases().toLine(one) + "\n")
                .reduce("", String::concat);
        assertEquals(made, Files.readString(Path.of("knowledge/demo/past-cases.jsonl")));
        assertTrue(made.lines().allMatch(line -> line.contains("\"invented\":true")));
    }

    private static CaseTree tree(PastCase one) {
        return CaseTree.of(TUNICA.pastCases().toLine(one).getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> faults(CaseTree tree) {
        try {
            TUNICA.pastCases().readPastCase("past case", tree.bytes());
            return List.of();
        } catch (FaultyInput e) {
            return e.faults().stream().map(Fault::toString).toList();
        }
    }
}
