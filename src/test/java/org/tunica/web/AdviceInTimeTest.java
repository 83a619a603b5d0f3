package org.tunica.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tunica.Cold;
import org.tunica.Tunica;
import org.tunica.casefile.CaseFile;
import org.tunica.fhir.Adviser;
import org.tunica.plan.AdviceSoFar;

/** An answer goes out in time with what is known, and what was computed behind is there when it is asked for again. */
class AdviceInTimeTest {
    /** Has met no wall yet, whatever other tests asked. */
    private static final Tunica FRESH = Cold.tunica();

    private static final Duration LONG = Duration.ofMinutes(5);

    @Test
    void whatIsNotComputedInTime_isAwaited_andWholeLater() throws IOException {
        CaseFile caseFile = demo("straight-thigh-trunk");
        try (AdviceInTime advice = new AdviceInTime(FRESH, Served.CLOCK)) {
            AdviceSoFar atOnce = advice.within(Duration.ZERO).advise(caseFile);
            assertFalse(atOnce.isWhole());
            assertFalse(atOnce.awaited().isEmpty());
            AdviceSoFar later = advice.within(LONG).advise(caseFile);
            assertTrue(later.isWhole());
            assertEquals(FRESH.advise(caseFile), later.advice());
            assertTrue(advice.within(Duration.ZERO).advise(caseFile).isWhole(), "what is known is not computed again");
        }
    }

    @Test
    void howeverManyAsk_eachIsAnsweredForItsOwnCase_andOnesThatFoundNoPlaceMayAskAgain() throws IOException {
        String json = FRESH.toJson(demo("pregnancy"));
        try (AdviceInTime advice = new AdviceInTime(FRESH, Served.CLOCK)) {
            Adviser atOnce = advice.within(Duration.ZERO);
            List<CaseFile> cases = IntStream.range(0, 80)
                    .mapToObj(i -> read(json.replace("\"larkspur-09\"", "\"case-" + i + "\"")))
                    .toList();
            List<AdviceSoFar> answers = cases.stream().map(atOnce::advise).toList();
            for (int i = 0; i < cases.size(); i++) {
                assertEquals("case-" + i, answers.get(i).advice().caseRef());
            }
            assertTrue(advice.within(LONG).advise(cases.get(0)).isWhole());
        }
    }

    private static CaseFile demo(String name) throws IOException {
        return read(Files.readString(Path.of("knowledge/demo/" + name + ".json")));
    }

    private static CaseFile read(String json) {
        return FRESH.readCase("case", json.getBytes(StandardCharsets.UTF_8));
    }
}
