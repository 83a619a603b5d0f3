package org.tunica;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tunica.casefile.CaseFile;
import org.tunica.invented.InventedLibrary;
import org.tunica.knowledge.Bundle;
import org.tunica.outcomes.AuditQuestion;
import org.tunica.pastcases.CaseProgress;
import org.tunica.replay.ReplayRequest;
import org.tunica.replay.ReplayResult;
import org.tunica.similar.CaseLibrary;
import org.tunica.similar.SimilarRequest;

/** What is written about past cases keeps to its published schema, held by a validator of the standard. */
class WrittenSchemasTest {
    private static final Tunica TUNICA = Tunica.shipped();

    @Test
    void similarCases_keepToTheirSchema() throws IOException {
        CaseFile caseFile =
                TUNICA.readCase("case", Files.readAllBytes(Path.of("knowledge/demo/both-legs-many-segments.json")));
        try (CaseLibrary library = TUNICA.likeness().inventedCases()) {
            holds(
                    TUNICA.schema(Contract.SIMILAR),
                    TUNICA.toJson(TUNICA.likeness().similar(caseFile, library, SimilarRequest.usual())));
            holds(
                    TUNICA.schema(Contract.SIMILAR),
                    TUNICA.toJson(TUNICA.likeness().similar("pain", library, SimilarRequest.usual())));
        }
    }

    @Test
    void audit_keepsToItsSchema() {
        InventedLibrary library = TUNICA.pastCases().inventedLibrary(InventedLibrary.USUAL_SEED);
        holds(
                TUNICA.schema(Contract.AUDIT),
                TUNICA.toJson(TUNICA.audits().audit(library.cases(300)::forEach, AuditQuestion.ALL)));
        AuditQuestion compared = new AuditQuestion(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(2015),
                OptionalInt.empty(),
                List.of("laser-1470-radial", "rf-segmental-7cm"));
        holds(
                TUNICA.schema(Contract.AUDIT),
                TUNICA.toJson(TUNICA.audits().audit(library.cases(300)::forEach, compared)));
    }

    @Test
    void replay_keepsToItsSchema() {
        Map<String, String> texts = new TreeMap<>(Bundle.shipped().texts());
        texts.computeIfPresent(
                "rules/3-cautions/arteries.rule",
                (path, text) -> text.replaceFirst("then caution strongly", "then caution slightly"));
        Replays replays = TUNICA.against(Tunica.of(Bundle.of(texts)));
        ReplayRequest request =
                new ReplayRequest(Optional.empty(), Optional.of(new ReplayRequest.Invented(5, 4)), Optional.empty(), 2);
        ReplayResult result = replays.prepare(request).run(CaseProgress.NONE);
        assertFalse(result.same());
        holds(TUNICA.schema(Contract.REPLAY), replays.toJson(result));
    }

    private static void holds(String text, String written) {
        SchemaAgreement.isASchema(text);
        Schema schema = SchemaAgreement.schema(text);
        assertEquals(List.of(), schema.validate(written, InputFormat.JSON));
        String unknown = written.replaceFirst("\"caution\"", "\"cautoin\"");
        assertFalse(schema.validate(unknown, InputFormat.JSON).isEmpty(), "a misspelt part is seen");
    }
}
